package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/**
 * What a maker decided about one machine stand.
 *
 * @param unit what the maker writes and reads
 * @param workingHeight floor to the machine's work surface, mm
 * @param plan outline of the carcass, without fronts and overhang
 */
public record StandDesign(
        String name,
        Units unit,
        Machine machine,
        double workingHeight,
        Size2 plan,
        Support support,
        CarcassPlan carcass,
        Worktop worktop,
        List<Bay> bays,
        DrawerPlan drawers,
        Screws screws,
        Saw saw) {
    public StandDesign {
        bays = List.copyOf(bays);
    }

    /** The same design, read back in other units. */
    public StandDesign readIn(Units other) {
        return new StandDesign(
                name, other, machine, workingHeight, plan, support, carcass, worktop, bays, drawers, screws, saw);
    }

    /** Every sheet good that its parts are cut from, each once, in the order of the carcass, worktop and drawers. */
    public List<SheetGood> sheets() {
        return Stream.of(
                        carcass.sheet(),
                        carcass.back(),
                        worktop.sheet(),
                        drawers.box(),
                        drawers.bottom(),
                        drawers.front())
                .distinct()
                .toList();
    }

    /**
     * The box that everything hangs on.
     *
     * @param sheet of sides, bottom, sub-top, partitions, blocks and plinth
     * @param housing depth of every dado and rabbet, mm
     * @param fit how much wider a dado is than the panel in it, mm
     */
    public record CarcassPlan(SheetGood sheet, SheetGood back, double housing, double fit) {}

    /**
     * What lies on the sub-top.
     *
     * @param layers 1 or 2; two are glued and screwed
     */
    public record Worktop(SheetGood sheet, int layers, Overhang overhang) {
        /** How far the worktop reaches over the carcass on each side, mm. */
        public record Overhang(double front, double back, double left, double right) {}
    }

    /**
     * One vertical division of the carcass.
     *
     * @param width of its opening, mm; bays without a width share what is left evenly
     * @param contents from top to bottom
     */
    public record Bay(OptionalDouble width, List<Content> contents) {
        public Bay {
            contents = List.copyOf(contents);
        }
    }

    /** What fills a part of a bay's height. */
    public sealed interface Content {
        /**
         * Drawers with fronts of given heights.
         *
         * @param fronts heights from top to bottom, mm
         */
        record GivenDrawers(List<Double> fronts) implements Content {
            public GivenDrawers {
                fronts = List.copyOf(fronts);
            }
        }

        /** This many drawers, with equal fronts, in the height that is left. */
        record EqualDrawers(int count) implements Content {}

        /**
         * As many drawers as the height left can hold, with fronts of one height; the lowest takes what remains.
         *
         * @param front height, mm
         */
        record FillDrawers(double front) implements Content {}
    }

    /**
     * How all drawers are made.
     *
     * @param box sheet of the box's sides, front and back
     * @param gap around fronts, mm
     * @param bumper thickness of the bumpers between an overlay front and the carcass, mm
     */
    public record DrawerPlan(
            SheetGood box, SheetGood bottom, SheetGood front, Slide slide, Mount mount, double gap, double bumper) {}

    /** How a drawer front meets the carcass. */
    public enum Mount {
        @JsonProperty("overlay")
        OVERLAY,
        @JsonProperty("inset")
        INSET
    }

    /**
     * Screws by what they hold.
     *
     * @param panel for worktop, back, blocks and fronts
     * @param slide for drawer slides
     */
    public record Screws(Screw panel, Screw slide) {}
}
