package org.standwright.check.bending;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.check.Remedy;
import org.standwright.design.Bay;
import org.standwright.design.Joint;
import org.standwright.design.Layout;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.Worktop;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** Changes that make a stand bend less. Whether one can be built and is enough is found out by trying it. */
final class Stiffer {
    private static final double INCH = 25.4;

    private Stiffer() {}

    static Remedy secondLayer() {
        return Remedy.ofStand(
                "a second worktop layer",
                design -> design.worktop().layers() == 1
                        ? Optional.of(Redesign.of(design)
                                .worktop(with(design.worktop(), design.worktop().sheet(), 2))
                                .done())
                        : Optional.empty());
    }

    static Remedy thickerWorktop(StandDesign design) {
        var thicker = ThickerSheet.than(design.worktop().sheet(), design);
        return Remedy.ofStand(
                words("the worktop", thicker, design),
                from -> Optional.of(Redesign.of(from)
                        .worktop(with(from.worktop(), thicker, from.worktop().layers()))
                        .done()));
    }

    static Remedy thickerCarcass(StandDesign design) {
        var thicker = ThickerSheet.than(design.carcass().sheet(), design);
        return Remedy.ofStand(
                words("the carcass", thicker, design),
                from -> Optional.of(Redesign.of(from)
                        .carcass(from.carcass().of(thicker, from.carcass().back()))
                        .done()));
    }

    static Remedy thickerBottoms(StandDesign design) {
        var thicker = ThickerSheet.than(design.drawers().bottom(), design);
        return Remedy.ofStand(
                words("the drawer bottoms", thicker, design),
                from -> Optional.of(Redesign.of(from)
                        .drawers(from.drawers()
                                .of(
                                        from.drawers().box(),
                                        thicker,
                                        from.drawers().front()))
                        .done()));
    }

    /** The bottom doubled over the whole plan, instead of strips along the sides. */
    static Remedy doubledBottom() {
        return Remedy.ofStand("the bottom doubled over the whole plan", design -> {
            if (design.support() instanceof Support.Casters casters && casters.bed() == Support.Bed.STRIPS) {
                return Optional.of(Redesign.of(design)
                        .support(new Support.Casters(casters.caster(), casters.others(), Support.Bed.DOUBLED_BOTTOM))
                        .done());
            }
            if (design.support() instanceof Support.Levelers levelers && levelers.bed() == Support.Bed.STRIPS) {
                return Optional.of(Redesign.of(design)
                        .support(new Support.Levelers(levelers.leveler(), Support.Bed.DOUBLED_BOTTOM))
                        .done());
            }
            return Optional.empty();
        });
    }

    /** Panels housed and glued in each other, so that partitions tie bottom and top together. */
    static Remedy housed() {
        return Remedy.ofStand("housed joints instead of screws", design -> {
            var now = design.carcass();
            return now.joint() instanceof Joint.Screwed
                    ? Optional.of(Redesign.of(design)
                            .carcass(now.joined(new Joint.Housed()))
                            .done())
                    : Optional.empty();
        });
    }

    /**
     * A plinth that holds the bottom under its partitions too; its sizes are common practice, no source.
     *
     * @param design in whose units its height is written
     */
    static Remedy plinth(StandDesign design) {
        var plinth = design.unit() == Units.MM
                ? new Support.Plinth(90, 75, 5)
                : new Support.Plinth(3.5 * INCH, 3 * INCH, 3 * INCH / 16);
        return Remedy.ofStand(
                "a plinth " + design.unit().length(plinth.height()) + " high instead of casters or levelers",
                from -> BottomSpan.isHeldUnderPartitions(from.support())
                        ? Optional.empty()
                        : Optional.of(Redesign.of(from).support(plinth).done()));
    }

    /**
     * A bay of the carcass in two halves with the same contents, a partition between them. The other bays keep their
     * widths, the halves share what they leave.
     *
     * @param bay its place in the built stand, from the left, from 0
     */
    static Remedy partition(Stand stand, int bay) {
        var name = stand.bays().get(bay).name();
        return Remedy.ofStand(
                "bay " + name + " in two halves with a partition",
                from -> from.bays().size() == stand.bays().size()
                        ? Optional.of(split(from, stand, bay))
                        : Optional.empty()); // it is divided already
    }

    /** A partition in the bay over which a span lies; none where the span leads over several. */
    static List<Remedy> partitions(Stand stand, Gap gap) {
        for (int bay = 0; bay < stand.bays().size(); bay++) {
            var opening = stand.bays().get(bay).opening();
            if (!Grid.less(gap.x0(), opening.x0()) && !Grid.less(opening.x1(), gap.x1())) {
                return List.of(partition(stand, bay));
            }
        }
        return List.of();
    }

    private static StandDesign split(StandDesign from, Stand stand, int bay) {
        int last = from.bays().size() - 1;
        boolean mirrored = from.layout() == Layout.MIRRORED;
        var bays = new ArrayList<Bay>();
        for (int i = 0; i <= last; i++) {
            int built = mirrored ? last - i : i;
            double width = stand.bays().get(built).opening().width();
            var contents = from.bays().get(i).contents();
            if (built == bay) {
                var half = new Bay(OptionalDouble.empty(), contents);
                bays.addAll(List.of(half, half));
            } else {
                bays.add(new Bay(OptionalDouble.of(width), contents));
            }
        }
        return Redesign.of(from).bays(bays).done();
    }

    private static Worktop with(Worktop now, SheetGood sheet, int layers) {
        return new Worktop(sheet, layers, now.overhang(), now.plate());
    }

    private static String words(String what, SheetGood thicker, StandDesign design) {
        var thickness = design.unit().length(thicker.material().thickness());
        return design.sheets().contains(thicker)
                ? what + " of " + thicker.material().name()
                : what + " of the same board " + thickness + " thick";
    }
}
