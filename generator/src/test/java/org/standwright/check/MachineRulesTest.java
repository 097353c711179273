package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.check.Stands.found;
import static org.standwright.check.Stands.placed;
import static org.standwright.check.Stands.plain;
import static org.standwright.check.Stands.withMachine;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.design.Draft;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Feed;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Side;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/** The rules about where the machine stands, where its operator does and what is beside it. */
class MachineRulesTest {
    private static final Stand STAND = StandBuilder.build(plain(draft -> {}));

    /** The worktop of 720 x 560 reaches 20 mm over the front: from -20 to 560. */
    @Test
    void stopsAMachineWhoseBaseHangsOverTheWorktop() {
        var right = base(170, 100, 730, 460);
        var frontAndLeft = base(-5, -32, 555, 328);
        var flush = base(0, -20, 720, 560);

        assertThat(found(right, "machine-on-worktop")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.subject()).isEqualTo("planer");
            assertThat(finding.message()).contains("hangs over the worktop by 10 mm at the right.");
        });
        assertThat(found(frontAndLeft, "machine-on-worktop"))
                .extracting(Finding::message)
                .satisfiesExactly(
                        message -> assertThat(message).contains("by 12 mm at the front"),
                        message -> assertThat(message).contains("by 5 mm at the left"));
        assertThat(found(flush, "machine-on-worktop")).isEmpty();
    }

    @Test
    void tellsHowFarDrawersComeOutWhereTheOperatorIsNot() {
        var left = withMachine(machine -> machine.operator = Side.LEFT);

        assertThat(found(left, "drawer-in-the-way")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.message())
                    .contains("The operator works at the stand's left", "its front (bay 1 by 500 mm)");
        });
        assertThat(found(STAND, "drawer-in-the-way")).isEmpty();
    }

    @Test
    void tellsThatAnOpenDrawerLiesInTheFeedPath() {
        assertThat(found(withMachine(machine -> machine.feed = Feed.FRONT_TO_BACK), "drawer-in-the-way"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message())
                        .contains("Boards go in at the front", "in the feed path (bay 1 by 500 mm)"));
        assertThat(found(withMachine(machine -> machine.feed = Feed.BACK_TO_FRONT), "drawer-in-the-way"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("Boards come out at the front"));
        assertThat(found(withMachine(machine -> machine.feed = Feed.LEFT_TO_RIGHT), "drawer-in-the-way"))
                .isEmpty();
    }

    /** Turned by 90° counter-clockwise, the machine's front faces the stand's right and its left the stand's front. */
    @Test
    void turnsOperatorAndFeedWithTheMachine() {
        var turned = plain(draft -> {
            draft.place = new Place(90, draft.place.margins(), Optional.empty());
            draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.feed = Feed.LEFT_TO_RIGHT);
        });

        assertThat(found(turned, "drawer-in-the-way"))
                .extracting(Finding::message)
                .satisfiesExactly(
                        message -> assertThat(message).contains("works at the stand's right"),
                        message -> assertThat(message).contains("Boards go in at the front"));
    }

    @Test
    void believesThePlacedMachineFirst() {
        var placed = placed(STAND, box(100, 100, 200, 200), Side.BACK, Optional.of(Side.FRONT));

        assertThat(found(placed, "drawer-in-the-way")).hasSize(2);
    }

    @Test
    void keepsAWallFromTheSidesThatHaveToStayInReach() {
        var design = withMachine(machine -> machine.reachable = List.of(Side.FRONT, Side.LEFT, Side.BACK));

        assertThat(found(design, "sides-in-reach")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.message()).contains("in reach from the stand's back and left");
        });
        assertThat(found(withMachine(machine -> machine.reachable = List.of(Side.FRONT)), "sides-in-reach"))
                .isEmpty();
    }

    /** The machine's right side lies at the back of the stand when it is turned by 90° counter-clockwise. */
    @Test
    void turnsTheSidesThatHaveToStayInReach() {
        var turned = plain(draft -> {
            draft.place = new Place(90, draft.place.margins(), Optional.empty());
            draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.reachable = List.of(Side.RIGHT));
        });

        assertThat(found(turned, "sides-in-reach"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("from the stand's back:"));
    }

    /** An outfeed lies 0 to 3 mm below the table before it (guides to outfeed tables, references 6.3 [S/P]). */
    @Test
    void tellsHowAStandLiesBesideItsNeighbour() {
        assertThat(found(beside(0), "neighbour-level")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.subject()).isEqualTo("table saw");
            assertThat(finding.message())
                    .startsWith("900 mm, level with table saw (at 900 mm); it can be set from 885 mm to 920 mm.");
        });
        assertThat(found(beside(3), "neighbour-level")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.message()).startsWith("897 mm, 3 mm below table saw");
        });
        assertThat(found(beside(4), "neighbour-level"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.CAUTION));
        assertThat(found(STAND, "neighbour-level")).isEmpty();
    }

    /** Machines meant for a fixed location are anchored: 29 CFR 1910.212(b) [C]. */
    @Test
    void tellsToBoltDownAMachineWithoutBoltHoles() {
        var mounting = new Mounting(10, 8, new Point2(30, 30), List.of(new Point2(0, 0), new Point2(500, 0)));

        assertThat(found(STAND, "machine-anchor")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.source()).isEqualTo("29 CFR 1910.212(b)");
        });
        assertThat(found(withMachine(machine -> machine.mounting = Optional.of(mounting)), "machine-anchor"))
                .isEmpty();
        var routerTable = withMachine(machine -> machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0));
        assertThat(found(routerTable, "machine-anchor")).isEmpty();
    }

    private static StandDesign beside(double below) {
        return plain(draft -> draft.workingHeight = new WorkingHeight.Beside("table saw", 900, below, 0));
    }

    private static Stand base(double x0, double y0, double x1, double y1) {
        return placed(STAND, box(x0, y0, x1, y1), Side.FRONT, Optional.empty());
    }

    private static Box3 box(double x0, double y0, double x1, double y1) {
        return new Box3(new Vec3(x0, y0, 790), new Vec3(x1, y1, 900));
    }
}
