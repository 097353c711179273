package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.check.Finding;
import org.standwright.check.Stands;
import org.standwright.design.Cutout;
import org.standwright.design.Cutout.In;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.kit.DustPort;
import org.standwright.design.kit.Machine;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/** Carcass 600 x 500, sides and partition 18, worktop 20 over in front, back 6. */
class CutoutsTest {
    private static final List<String> WOOD = List.of("worktop upper layer", "worktop lower layer", "sub-top");

    @Test
    void goesThroughWorktopAndSubTop() {
        var stand =
                StandBuilder.build(with(round(In.WORKTOP, 130, 90, 60), rectangular(In.WORKTOP, 450, 300, 100, 40)));

        for (var part : WOOD) {
            assertThat(Bored.holes(stand, part, "hose")).containsExactly("130.0 90.0 60.0");
        }
        assertThat(Bored.pockets(stand, "worktop upper layer", "cord")).containsExactly("400.0 280.0 500.0 320.0");
        assertThat(Bored.pockets(stand, "sub-top", "cord")).containsExactly("400.0 320.0 500.0 280.0");
        Clearances.check(stand.assembly());
    }

    /** From the carcass's lower edge: its underside lies 76 above the floor, on levelers of 40 and blocks of 36. */
    @Test
    void goesThroughTheBack() {
        var stand = StandBuilder.build(with(round(In.BACK, 130, 90, 60), rectangular(In.BACK, 450, 300, 100, 40)));

        assertThat(Bored.holes(stand, "back", "hose")).containsExactly("130.0 166.0 60.0");
        assertThat(Bored.features(Bored.part(stand, "back"), Pocket.class))
                .singleElement()
                .satisfies(pocket -> {
                    assertThat(pocket.area().area()).isCloseTo(4000, within(1e-6));
                    assertThat(pocket.radius()).isEqualTo(5);
                });
        assertThat(Bored.holes(stand, "sub-top", "hose")).isEmpty();
        Clearances.check(stand.assembly());
    }

    /** A cord that comes down in front of the carcass goes through the worktop alone. */
    @Test
    void leavesTheSubTopWholeUnderAnOverhang() {
        var stand = StandBuilder.build(Draft.of(
                with(round(In.WORKTOP, 300, -50, 40)),
                draft -> draft.worktop =
                        new Worktop(draft.worktop.sheet(), 2, new Worktop.Overhang(120, 0, 0, 0), Optional.empty())));

        assertThat(Bored.holes(stand, "worktop lower layer", "hose")).containsExactly("300.0 -50.0 40.0");
        assertThat(Bored.holes(stand, "sub-top", "hose")).isEmpty();
    }

    /** What it meets, and the nearest centre that does not; the worktop keeps 20 mm of wood at its edges. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        worktop | 310 | 250 | 60 | /cutouts/0 | meets the partition     | x 339 mm, y 250 mm
        worktop | 290 | 250 | 60 | /cutouts/0 | meets the partition     | x 261 mm, y 250 mm
        worktop | 40  | 250 | 60 | /cutouts/0 | meets the left side     | x 50 mm, y 250 mm
        worktop | 150 | 480 | 60 | /cutouts/0 | meets the back          | x 150 mm, y 450 mm
        worktop | 150 | 20  | 60 | /cutouts/0 | meets the front edge of the sub-top | x 150 mm, y 50 mm
        back    | 150 | 30  | 60 | /cutouts/0 | meets the bottom        | x 150 mm, y 48 mm
        back    | 590 | 200 | 60 | /cutouts/0 | meets the right side    | x 552 mm, y 200 mm
        back    | 305 | 200 | 60 | /cutouts/0 | meets the partition     | x 339 mm, y 200 mm
        """)
    void refusesOneThatMeetsAPanel(
            String in, double x, double y, double diameter, String field, String trouble, String wayOut) {
        var board = In.valueOf(in.toUpperCase(Locale.ROOT));
        var design = with(round(board, x, y, diameter));
        var refusal = Refusals.of(design);

        assertThat(refusal.field()).isEqualTo(field);
        assertThat(refusal).hasMessageContaining(trouble).hasMessageContaining("Put its centre at " + wayOut + ".");
        double freeX = Refusals.figure(refusal, "centre at x ([-0-9.]+) mm");
        double freeY = Refusals.figure(refusal, "mm, y ([-0-9.]+) mm");
        StandBuilder.build(with(round(board, freeX, freeY, diameter)));
    }

    @Test
    void refusesTwoThatMeet() {
        var refusal = Refusals.of(with(round(In.WORKTOP, 130, 200, 60), round(In.WORKTOP, 180, 200, 40)));

        assertThat(refusal.field()).isEqualTo("/cutouts/1");
        assertThat(refusal).hasMessageContaining("meets cut-out 1").hasMessageContaining("Put its centre at x 190 mm");
    }

    /** The bolt at 190, 180 has a washer of 25 on it. */
    @Test
    void refusesOneThatTakesTheWoodUnderABolt() {
        var refusal = Refusals.of(TopDesigns.press(draft -> draft.cutouts = List.of(round(In.WORKTOP, 150, 180, 60))));

        assertThat(refusal).hasMessageContaining("meets machine bolt 1 with its washer");
        assertThat(refusal).hasMessageContaining("Put its centre at x 147.5 mm, y 180 mm.");
    }

    @Test
    void refusesCornersRounderThanItself() {
        var refusal = Refusals.of(with(new Cutout.Rectangular("cord", In.WORKTOP, 150, 200, 100, 40, 25)));

        assertThat(refusal.field()).isEqualTo("/cutouts/0/radius");
        assertThat(refusal).hasMessageContaining("Make the radius 20 mm or less.");
    }

    /** Wherever the hole lies, its screws make way and stay four at least. */
    @ParameterizedTest
    @CsvSource({"70, 60", "70, 250", "150, 440", "230, 60", "530, 440"})
    void movesAWorktopScrewOutOfItsWay(double x, double y) {
        var stand = StandBuilder.build(with(rectangular(In.WORKTOP, x, y, 60, 50)));
        var screws = Bored.holes(stand, "sub-top", "worktop screw");

        assertThat(screws).hasSizeGreaterThanOrEqualTo(4);
        var cut = Bored.features(Bored.part(stand, "sub-top"), Pocket.class)
                .get(0)
                .area();
        var placed = Bored.features(Bored.part(stand, "sub-top"), Hole.class);
        assertThat(placed)
                .allSatisfy(hole -> assertThat(hole.x() + 10 > cut.x0()
                                && hole.x() - 10 < cut.x1()
                                && hole.y() + 10 > cut.y0()
                                && hole.y() - 10 < cut.y1())
                        .isFalse());
    }

    /** Hose and 6 mm (common practice, no source). */
    @Test
    void notesAHoleTooTightForTheHose() {
        assertThat(hoseFindings(66)).isEmpty();
        assertThat(hoseFindings(65))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.message()).startsWith("The hole of 65 mm is too tight for a hose of 60 mm"));
    }

    @Test
    void namesTheCentreAsItIsWrittenForAMirroredStand() {
        var mirrored = Draft.of(with(round(In.WORKTOP, 560, 250, 60)), draft -> draft.layout = Layout.MIRRORED);

        assertThat(Refusals.of(mirrored))
                .hasMessageContaining("meets the left side")
                .hasMessageContaining("Put its centre at x 550 mm, y 250 mm.");
        StandBuilder.build(Draft.of(with(round(In.WORKTOP, 550, 250, 60)), draft -> draft.layout = Layout.MIRRORED));
    }

    private static List<Finding> hoseFindings(double hole) {
        var design = Draft.of(
                with(round(In.WORKTOP, 130, 90, hole)),
                draft -> draft.machine = Draft.OfMachine.of(
                        draft.machine, machine -> machine.dustPort = Optional.of(new DustPort(60, Vec3.ZERO))));
        return Stands.found(design, "hose-hole");
    }

    private static Cutout round(In in, double x, double y, double diameter) {
        return new Cutout.Round("hose", in, x, y, diameter);
    }

    private static Cutout rectangular(In in, double x, double y, double width, double height) {
        return new Cutout.Rectangular("cord", in, x, y, width, height, 5);
    }

    /** Two equal bays: the partition stands from 291 to 309. */
    private static StandDesign with(Cutout... cutouts) {
        return TopDesigns.press(draft -> {
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            draft.machine = unbolted();
            draft.cutouts = List.of(cutouts);
        });
    }

    private static Machine unbolted() {
        return Draft.OfMachine.of(TopDesigns.PRESS, machine -> machine.mounting = Optional.empty());
    }
}
