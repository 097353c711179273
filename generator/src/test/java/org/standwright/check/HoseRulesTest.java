package org.standwright.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.check.Stands.divided;
import static org.standwright.check.Stands.found;
import static org.standwright.check.Stands.plain;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Cutout;
import org.standwright.design.Cutout.In;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.PlateOpening;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.kit.Cord;
import org.standwright.design.kit.DustPort;
import org.standwright.design.kit.Side;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** The rules about hoses, cords and air. Their figures are common practice, no source. */
class HoseRulesTest {
    private static final double HOSE = 100;

    /** Bend radius at least 3 x diameter: a hose of 100 mm takes an opening 300 mm wide; the carcass is 554 mm deep. */
    @Test
    void warnsOfABayTooNarrowForItsHoseToBend() {
        assertThat(found(divided(clear(HOSE), bay(299)), "hose-bend"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.subject()).isEqualTo("bay 1");
                    assertThat(finding.message())
                            .contains("299 mm wide and 554 mm deep", "a hose of 100 mm bends in 300 mm");
                });
        assertThat(found(divided(clear(HOSE), bay(300)), "hose-bend")).isEmpty();
        assertThat(found(divided(clear(185), bay(600)), "hose-bend")).hasSize(1); // 555 mm, deeper than the carcass
        assertThat(found(divided(clear(184), bay(600)), "hose-bend")).isEmpty();
    }

    @Test
    void findsAHoseInABayWithinABay() {
        var design = plain(draft -> draft.bays = List.of(new Bay(
                OptionalDouble.empty(),
                List.of(new Content.Divided(OptionalDouble.empty(), clear(HOSE).bays())))));
        var opening = new Rect(18, 100, 600, 700);
        var inner = new BayLayout("1a", opening, bay(250).sections());
        var outer = new BayLayout("1", opening, List.of(new SectionLayout.Divided(opening, List.of(inner))));

        assertThat(found(divided(design, outer), "hose-bend"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.subject()).isEqualTo("bay 1a"));
    }

    @Test
    void leavesABayAloneThatIsClearForSomethingElse() {
        var motor = new Content.Clear(OptionalDouble.empty(), "motor", OptionalDouble.empty());
        var design = plain(draft -> draft.bays = List.of(new Bay(OptionalDouble.empty(), List.of(motor))));
        var opening = new Rect(18, 100, 118, 700);
        var layout = new BayLayout("1", opening, List.of(new SectionLayout.Clear(opening, "motor")));

        assertThat(found(divided(design, layout), "hose-bend")).isEmpty();
    }

    @Test
    void tellsThatADustPortHasNoWayThroughTheStand() {
        var port = plain(HoseRulesTest::dusty);

        assertThat(found(port, "hose-hole")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.message()).contains("neither a cut-out nor a bay kept clear for a hose of 100 mm");
        });
        assertThat(found(plain(draft -> {}), "hose-hole")).isEmpty();
        var withBay = Draft.of(clear(HOSE), HoseRulesTest::dusty);
        assertThat(found(divided(withBay, bay(400)), "hose-hole")).isEmpty();
    }

    /** Hole = hose + 6 mm. */
    @Test
    void warnsOfAHoleTooTightForTheHose() {
        assertThat(found(withHole("Dust hose", 105.9), "hose-hole"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.subject()).isEqualTo("cut-out for Dust hose");
                    assertThat(finding.message()).contains("takes 106 mm or more");
                });
        assertThat(found(withHole("dust hose", 106), "hose-hole")).isEmpty();
        assertThat(found(withHole("air inlet", 60), "hose-hole")).isEmpty();
    }

    @Test
    void warnsWhenNoHoleForTheCordPassesThePlug() {
        var small = new Cutout.Round("cord", In.BACK, 100, 100, 35);
        var flat = new Cutout.Rectangular("power cord", In.BACK, 200, 100, 80, 39, 2);
        var large = new Cutout.Round("cord", In.WORKTOP, 300, 100, 40);

        assertThat(found(corded(small, flat), "cord-hole")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message()).contains("It is 39 mm wide, but the plug of planer is 40 mm");
        });
        assertThat(found(corded(small, large), "cord-hole")).isEmpty();
        assertThat(found(corded(), "cord-hole")).isEmpty();
    }

    @Test
    void wantsAirInABayThatADoorClosesUnderAPlate() {
        var inlet = new Cutout.Round("air inlet", In.BACK, 100, 100, 60);

        assertThat(found(divided(router(), closed(18, 400)), "router-air"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.subject()).isEqualTo("bay 1");
                    assertThat(finding.message()).contains("router plate", "air inlet");
                });
        assertThat(found(divided(router(), closed(480, 702)), "router-air")).isEmpty();
        assertThat(found(divided(router(inlet), closed(18, 400)), "router-air")).isEmpty();
        assertThat(found(divided(plain(draft -> {}), closed(18, 400)), "router-air"))
                .isEmpty();
        assertThat(found(divided(router(), bay(400)), "router-air")).isEmpty();
    }

    /** The plate is written 460 to 660 from the left of 720, so it is built at 60 to 260. */
    @Test
    void looksUnderThePlateWhereAMirroredStandHasIt() {
        var mirrored = Draft.of(router(560), draft -> draft.layout = Layout.MIRRORED);

        assertThat(found(divided(mirrored, closed(18, 400)), "router-air")).hasSize(1);
        assertThat(found(divided(mirrored, closed(400, 702)), "router-air")).isEmpty();
        assertThat(found(divided(router(560), closed(18, 400)), "router-air")).isEmpty();
        assertThat(found(divided(router(560), closed(400, 702)), "router-air")).hasSize(1);
    }

    private static void dusty(Draft draft) {
        draft.machine = Draft.OfMachine.of(
                draft.machine, machine -> machine.dustPort = Optional.of(new DustPort(HOSE, new Vec3(280, 360, 200))));
    }

    private static StandDesign withHole(String use, double diameter) {
        var hole = new Cutout.Round(use, In.BACK, 360, 300, diameter);
        return Draft.of(plain(HoseRulesTest::dusty), draft -> draft.cutouts = List.of(hole));
    }

    private static StandDesign corded(Cutout... cutouts) {
        return plain(draft -> {
            draft.cutouts = List.of(cutouts);
            draft.machine = Draft.OfMachine.of(
                    draft.machine, machine -> machine.cord = Optional.of(new Cord(2000, Side.BACK, 40)));
        });
    }

    /** A plate from 260 to 460 mm from the left. */
    private static StandDesign router(Cutout... cutouts) {
        return router(360, cutouts);
    }

    private static StandDesign router(double x, Cutout... cutouts) {
        var plate = new PlateOpening("router plate", x, 250, 200, 300, 9.5, 10, 0.5, 20);
        return plain(draft -> {
            draft.cutouts = List.of(cutouts);
            draft.worktop = new Worktop(
                    draft.worktop.sheet(), draft.worktop.layers(), draft.worktop.overhang(), Optional.of(plate));
        });
    }

    private static StandDesign clear(double hose) {
        var clear = new Content.Clear(OptionalDouble.empty(), "dust hose", OptionalDouble.of(hose));
        return plain(draft -> draft.bays = List.of(new Bay(OptionalDouble.empty(), List.of(clear))));
    }

    private static BayLayout bay(double width) {
        var opening = new Rect(18, 100, 18 + width, 700);
        return new BayLayout("1", opening, List.of(new SectionLayout.Clear(opening, "dust hose")));
    }

    private static BayLayout closed(double from, double to) {
        var opening = new Rect(from, 100, to, 700);
        return new BayLayout(
                "1", opening, List.of(new SectionLayout.Closed(opening, List.of(), List.of(), Optional.empty())));
    }
}
