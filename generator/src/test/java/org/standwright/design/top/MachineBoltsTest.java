package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.given;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.assembly.Block;
import org.standwright.assembly.Hardware;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Range;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;

class MachineBoltsTest {
    private static final List<String> WOOD = List.of("worktop upper layer", "worktop lower layer", "sub-top");

    /**
     * Holes 40, 30 and 250, 40 and 100, 170 in a base of 300 x 200 over the middle of a carcass of 600 x 500. Unturned,
     * its corner lies at 150, 150; a quarter turn puts its left front corner at 400, 100, x to the back and y to the
     * left; a half turn its left front corner at 450, 350; three quarters at 200, 400, x to the front and y to the right.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        0   | 190.0 180.0 9.0, 400.0 190.0 9.0, 250.0 320.0 9.0
        90  | 370.0 140.0 9.0, 360.0 350.0 9.0, 230.0 200.0 9.0
        180 | 410.0 320.0 9.0, 200.0 310.0 9.0, 350.0 180.0 9.0
        270 | 230.0 360.0 9.0, 240.0 150.0 9.0, 370.0 300.0 9.0
        """)
    void boresTheHolePatternAtTheMachinesTruePlace(int turn, String holes) {
        var stand = StandBuilder.build(
                TopDesigns.press(draft -> draft.place = TopDesigns.place(turn, null, null, null, null)));

        for (var part : WOOD) {
            assertThat(Bored.holes(stand, part, "machine bolt")).isEqualTo(Arrays.asList(holes.split(", ")));
        }
        Clearances.check(stand.assembly());
    }

    /** The machine is not mirrored with its stand: left margin 50 becomes the right one, the pattern stays. */
    @Test
    void keepsThePatternOfAMirroredStand() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> {
            draft.place = TopDesigns.place(0, 50.0, null, null, null);
            draft.layout = Layout.MIRRORED;
        }));

        assertThat(Bored.holes(stand, "sub-top", "machine bolt"))
                .containsExactly("290.0 180.0 9.0", "500.0 190.0 9.0", "350.0 320.0 9.0");
    }

    /**
     * M8: flange 12, worktop 36, sub-top 18, washer 2, nut 6.4 and 3 of thread make 77.4: sold in 80, it ends 80 - 66 = 14
     * below the sub-top. Own arithmetic; bolts are sold in steps of 5 mm (common practice, no source).
     */
    @Test
    void takesTheNextBoltThatIsSoldAndShowsItsEnd() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> {}));

        assertThat(stand.assembly().hardware())
                .contains(
                        new Hardware("hexagon bolt M8 x 80", 3, "machine, down through worktop and sub-top"),
                        new Hardware("washer M8", 3, "machine, under the bolts' heads"),
                        new Hardware("washer M8, 25 mm or wider", 3, "machine, under the sub-top"),
                        new Hardware("lock nut M8", 3, "machine; re-tighten after the first hours of use"));
        double underside = stand.carcass().max().z() - 18;
        assertThat(lowestBolt(stand)).isCloseTo(underside - 14, within(1e-9));
        assertThat(stand.assembly().blocks())
                .filteredOn(block -> block.kind() == Block.Kind.BOLT)
                .hasSize(9)
                .allSatisfy(block -> assertThat(block.box().max().z()).isLessThanOrEqualTo(underside + 1e-9));
    }

    /** Shims of 2 to 12 mm: 77.4 + 12 = 89.4, sold in 90; with the least of them it ends 90 - 66 - 2 = 22 below. */
    @Test
    void reachesThroughTheHighestShims() {
        var stand = StandBuilder.build(
                TopDesigns.press(draft -> draft.place = TopDesigns.shims(Designs.CENTRED, new Range(2, 5, 12))));

        assertThat(stand.assembly().hardware()).extracting(Hardware::item).contains("hexagon bolt M8 x 90");
        assertThat(lowestBolt(stand)).isCloseTo(stand.carcass().max().z() - 18 - 22, within(1e-9));
    }

    /** A bolt of 1/2 in takes washers three times as wide, 38.1 mm (ISO 7093-1: outside three times inside). */
    @Test
    void takesWiderWashersForThickerBolts() {
        var stand = StandBuilder.build(TopDesigns.press(draft -> draft.machine = withBolts(12.7, 100, 100)));

        assertThat(stand.assembly().hardware()).extracting(Hardware::item).contains("washer 1/2 in, 38 mm or wider");
    }

    @Test
    void screwsNoWorktopWithinThirtyMillimetresOfABolt() {
        for (int x = 0; x <= 260; x += 20) {
            double left = x;
            var stand = StandBuilder.build(
                    TopDesigns.press(draft -> draft.place = TopDesigns.place(0, left + 10, null, 40.0, null)));
            var bolts = stand.machine().orElseThrow().bolts();
            var screws = Bored.holes(stand, "sub-top", "worktop screw");

            assertThat(screws).hasSizeGreaterThanOrEqualTo(4);
            for (var screw : screws) {
                var at = screw.split(" ");
                assertThat(bolts)
                        .allSatisfy(bolt -> assertThat(Math.hypot(
                                        bolt.x() - Double.parseDouble(at[0]), bolt.y() - Double.parseDouble(at[1])))
                                .isGreaterThan(30));
            }
        }
    }

    /**
     * A bolt 15 mm from the left side needs 12.5 + 5 = 17.5: shifted 2.5 to the right. One 70 from the left, in a base
     * whose left margin is 1, stands 18 + 15 from the outside.
     */
    @Test
    void namesTheShiftThatClearsASide() {
        var tight = TopDesigns.press(draft -> {
            draft.machine = withBolts(8, 32, 100);
            draft.place = TopDesigns.place(0, 1.0, null, null, null);
        });
        var refusal = Refusals.of(tight);

        assertThat(refusal.field()).isEqualTo("/place/margins");
        assertThat(refusal)
                .hasMessageContaining("Machine bolt 1 comes too close to the left side")
                .hasMessageContaining("Shift the machine 2.5 mm to the right: make its margins left 3.5 mm.");
        var stand =
                StandBuilder.build(Draft.of(tight, draft -> draft.place = TopDesigns.place(0, 3.5, null, null, null)));
        Clearances.check(stand.assembly());
    }

    /** The partition of two equal bays stands from 291 to 309; a bolt at 290 goes 16.5 to the left, at 310 to the right. */
    @ParameterizedTest
    @CsvSource({"290, 16.5, left", "312, 14.5, right", "300, 26.5, left"})
    void namesTheShiftThatClearsAPartition(double bolt, double shift, String way) {
        var refusal = Refusals.of(TopDesigns.press(draft -> {
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            draft.machine = withBolts(8, bolt - 150, 100);
        }));

        assertThat(refusal).hasMessageContaining("too close to the partition");
        assertThat(refusal).hasMessageContaining("Shift the machine " + trim(shift) + " mm to the " + way);
        double left = 150 + ("left".equals(way) ? -shift : shift);
        assertThat(Refusals.figure(refusal, "margins left ([0-9.]+) mm")).isCloseTo(left, within(1e-9));
        StandBuilder.build(TopDesigns.press(draft -> {
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            draft.machine = withBolts(8, bolt - 150, 100);
            draft.place = TopDesigns.place(0, left, null, null, null);
        }));
    }

    /** Both margins make the plan: one grows by what the other loses. */
    @Test
    void shiftsBothMarginsThatMakeThePlan() {
        var refusal = Refusals.of(TopDesigns.press(draft -> {
            draft.plan = TopDesigns.plan(null, 500.0);
            draft.machine = withBolts(8, 32, 100);
            draft.place = TopDesigns.place(0, 1.0, 299.0, null, null);
        }));

        assertThat(refusal).hasMessageContaining("make its margins left 3.5 mm, right 296.5 mm.");
    }

    /** In a mirrored stand the file's right margin is the one at the left. */
    @Test
    void namesTheMarginAsItIsWrittenForAMirroredStand() {
        var mirrored = TopDesigns.press(draft -> {
            draft.layout = Layout.MIRRORED;
            draft.machine = withBolts(8, 32, 100);
            draft.place = TopDesigns.place(0, null, 1.0, null, null);
        });

        assertThat(Refusals.of(mirrored))
                .hasMessageContaining("Shift the machine 2.5 mm to the right: make its margins right 3.5 mm.");
        StandBuilder.build(Draft.of(mirrored, draft -> draft.place = TopDesigns.place(0, null, 3.5, null, null)));
    }

    @Test
    void refusesBoltsOutsideTheWorktopAndBeyondTheSubTop() {
        var outside = TopDesigns.press(draft -> draft.place = TopDesigns.place(0, -60.0, null, null, null));
        assertThat(Refusals.of(outside)).hasMessageContaining("Machine bolt 1 lies outside the worktop");

        var front = TopDesigns.press(draft -> draft.place = TopDesigns.place(0, null, null, -5.0, null));
        var refusal = Refusals.of(front);
        assertThat(refusal).hasMessageContaining("leaves no room below");
        double margin = Refusals.figure(refusal, "margins front ([0-9.]+) mm");
        assertThat(margin).isCloseTo(20 + 17.5 - 30, within(1e-9));
        StandBuilder.build(Draft.of(front, draft -> draft.place = TopDesigns.place(0, null, null, margin, null)));
    }

    /** Washers of 25 mm on holes 20 apart. */
    @Test
    void refusesWashersThatMeet() {
        var refusal = Refusals.of(TopDesigns.press(draft -> draft.machine = Draft.OfMachine.of(
                TopDesigns.PRESS,
                machine -> machine.mounting = Optional.of(
                        new Mounting(12, 8, new Point2(0, 0), List.of(new Point2(100, 100), new Point2(120, 100)))))));

        assertThat(refusal.field()).isEqualTo("/machine/mounting");
        assertThat(refusal).hasMessageContaining("Machine bolts 1 and 2 are so close that their washers of 25 mm meet");
    }

    /** Bolts along the whole base, 40 apart, cannot clear a partition: the mounting is at fault. */
    @Test
    void refusesAPatternThatNoShiftBringsClear() {
        var holes = new ArrayList<Point2>();
        for (int x = 10; x <= 290; x += 40) {
            holes.add(new Point2(x, 100));
        }
        var refusal = Refusals.of(TopDesigns.press(draft -> {
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            draft.machine = Draft.OfMachine.of(
                    TopDesigns.PRESS,
                    machine -> machine.mounting = Optional.of(new Mounting(12, 8, new Point2(0, 0), holes)));
        }));

        assertThat(refusal.field()).isEqualTo("/machine/mounting");
    }

    /** The ends hang 14 below the sub-top: a box under them keeps 3 mm more, so it is 17 - 6 = 11 lower than without. */
    @Test
    void lowersTheUppermostBoxUnderBolts() {
        var with = StandBuilder.build(TopDesigns.press(draft -> draft.bays = List.of(bay(equal(3)))));
        var without = StandBuilder.build(TopDesigns.press(draft ->
                draft.machine = Draft.OfMachine.of(TopDesigns.PRESS, machine -> machine.mounting = Optional.empty())));

        assertThat(boxes(with).get(0)).isEqualTo(boxes(without).get(0) - 11);
        assertThat(boxes(with).subList(1, 3)).isEqualTo(boxes(without).subList(1, 3));
        Clearances.check(with.assembly());
    }

    @Test
    void lowersNoBoxInABayWithoutBolts() {
        List<Content> three = List.of(equal(3));
        var stand = StandBuilder.build(TopDesigns.press(draft -> {
            draft.plan(900, 500);
            draft.bays = List.of(bay(three.get(0)), bay(three.get(0)));
            draft.place = TopDesigns.place(0, 40.0, null, null, null);
        }));

        assertThat(stand.bays().get(0).drawers().get(0).box().height())
                .isEqualTo(stand.bays().get(1).drawers().get(0).box().height() - 11);
    }

    @Test
    void refusesADrawerTooLowForBoltsAbove() {
        var low = TopDesigns.press(draft -> draft.bays = List.of(bay(given(80), equal(2))));
        var refusal = Refusals.of(low);

        assertThat(refusal).hasMessageContaining("Machine bolts reach 14 mm below the sub-top, over drawer 1.1");
        double front = Refusals.figure(refusal, "Make this front ([0-9.]+) mm high");
        StandBuilder.build(Draft.of(low, draft -> draft.bays = List.of(bay(given(front), equal(2)))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 90, 180, 270})
    void keepsEverythingClearAtEveryTurn(double turn) {
        Clearances.check(StandBuilder.build(TopDesigns.press(draft -> {
                    draft.place = TopDesigns.place((int) turn, 60.0, null, 60.0, null);
                    draft.bays = List.of(bay(400.0, equal(3)), bay(equal(2)));
                    draft.plan(800, 500);
                }))
                .assembly());
    }

    private static Machine withBolts(double bolt, double x, double y) {
        return Draft.OfMachine.of(
                TopDesigns.PRESS,
                machine -> machine.mounting =
                        Optional.of(new Mounting(12, bolt, new Point2(0, 0), List.of(new Point2(x, y)))));
    }

    private static List<Double> boxes(Stand stand) {
        return stand.bays().get(0).drawers().stream()
                .map(drawer -> drawer.box().height())
                .toList();
    }

    private static double lowestBolt(Stand stand) {
        return stand.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.BOLT)
                .mapToDouble(block -> block.box().min().z())
                .min()
                .orElseThrow();
    }

    private static String trim(double value) {
        return value == Math.rint(value) ? String.valueOf((int) value) : String.valueOf(value);
    }
}
