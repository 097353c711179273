package org.standwright.design;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Envelope;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Pull;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Screw;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.Slide;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** Small designs for tests, with round numbers that a reader can add up. */
public final class Designs {
    public static final SheetGood BOARD_18 = sheet("board 18", 18, 2440, 1220);
    public static final SheetGood BOARD_12 = sheet("board 12", 12, 2440, 1220);
    public static final SheetGood BOARD_6 = sheet("board 6", 6, 2440, 1220);
    public static final Machine PLANER = Draft.OfMachine.plain(
            "planer",
            new Size2(560, 360),
            new Envelope(600, 700, 480, OptionalDouble.empty(), OptionalDouble.empty()),
            38,
            Reference.fixed(Reference.Kind.TABLE, 110));
    public static final Support.Casters CASTERS = new Support.Casters(
            new Caster("caster 100", 125, new Size2(100, 85), new Size2(80, 60), 9, 8, 85, 100, 80, true, 0.9),
            Optional.empty(),
            Support.Bed.STRIPS);
    public static final Support.Levelers LEVELERS = new Support.Levelers(
            new Leveler("leveler M10", new Range(25, 40, 60), 12, 25, 40, 150, 0.15), Support.Bed.STRIPS);

    public static final Pull PULL = new Pull("pull 96", 96, 4.5, 30);
    /** In the middle of the carcass, as it stands in front of its operator. */
    public static final Place CENTRED = new Place(
            0,
            new Place.Margins(
                    OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty()),
            Optional.empty());
    /** Nothing covered. */
    public static final Edges NO_EDGES = new Edges(
            Optional.empty(),
            Optional.empty(),
            new Edges.TopEdges(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));

    private Designs() {}

    /** 720 x 560, working height 900, on casters, two bays of overlay drawers. */
    public static StandDesign planerStand() {
        return stand(900, CASTERS, Mount.OVERLAY, List.of(bay(400, given(90), equal(3)), bay(fill(80))));
    }

    public static StandDesign stand(double workingHeight, Support support, Mount mount, List<Bay> bays) {
        return new StandDesign(
                "planer stand",
                Units.MM,
                PLANER,
                CENTRED,
                new WorkingHeight.Given(workingHeight),
                new Plan(OptionalDouble.of(720), OptionalDouble.of(560)),
                Layout.AS_WRITTEN,
                support,
                new CarcassPlan(BOARD_18, BOARD_6, 6, 0.15, new Joint.Housed()),
                new Worktop(BOARD_18, 2, new Worktop.Overhang(20, 0, 0, 0), Optional.empty()),
                List.of(),
                bays,
                new DrawerPlan(
                        BOARD_12,
                        BOARD_6,
                        BOARD_18,
                        new Hang.Slides(slide()),
                        mount,
                        3,
                        1.5,
                        new Grip.Bought(PULL),
                        OptionalDouble.of(0)),
                NO_EDGES,
                new Screws(
                        new Screw("screw 4", 4, 2.5, 4.5, List.of(16.0, 20.0, 25.0, 30.0, 40.0, 45.0, 50.0)),
                        new Screw("slide screw 4", 4, 2.5, 4.5, List.of(8.0, 10.0, 13.0, 16.0))),
                new Saw(3.2, 5),
                Optional.empty(),
                StockPlan.NONE,
                CuttingPlan.PLAIN,
                Optional.empty(),
                Loads.USUAL,
                Site.USUAL,
                Steady.BY_ITSELF,
                List.of());
    }

    /** Full-extension slides from 250 to 600 mm in steps of 50. */
    public static Slide slide() {
        var lengths = IntStream.rangeClosed(5, 12)
                .mapToObj(i -> new Slide.Size(
                        50 * i, 50 * i, List.of(35.0, 99.0, 50.0 * i - 40), List.of(35.0, 50.0 * i - 60), 0.14 * i))
                .toList();
        return new Slide("slide", 13, 45, 1.2, 2, 3, 45, true, lengths);
    }

    public static Bay bay(Content... contents) {
        return new Bay(OptionalDouble.empty(), List.of(contents));
    }

    public static Bay bay(double width, Content... contents) {
        return new Bay(OptionalDouble.of(width), List.of(contents));
    }

    public static Content given(Double... fronts) {
        return new Content.GivenDrawers(List.of(fronts));
    }

    public static Content given(double front) {
        return new Content.GivenDrawers(List.of(front));
    }

    public static Content equal(int count) {
        return new Content.EqualDrawers(count, OptionalDouble.empty(), OptionalDouble.empty());
    }

    public static Content fill(double front) {
        return new Content.FillDrawers(front);
    }

    public static SheetGood sheet(String name, double thickness, double length, double width) {
        return new SheetGood(
                new Material(name, thickness, 680, Grain.ALONG_LENGTH),
                length,
                width,
                Optional.empty(),
                Optional.empty());
    }
}
