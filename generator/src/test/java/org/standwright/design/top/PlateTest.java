package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Hardware;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.PlateOpening;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Reference;
import org.standwright.design.stand.StandBuilder;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.solid.ClosedSolids;

/** A plate 300 x 230 x 9.5 in the worktop of a carcass 900 x 500, two bays of 423. */
class PlateTest {
    private static final PlateOpening PLATE = new PlateOpening("router plate", 230, 270, 300, 230, 9.5, 12, 0.6, 14);

    /** 1 mm deeper than the plate, so that its screws can lift it: common practice, no source. Centre 230, 270 from the worktop's corner at 0, -20: the plate from 80, 135 to 380, 365; 0.3 mm wider all round. */
    @Test
    void letsThePlateInOnALedge() {
        var stand = built(PLATE);

        assertThat(Bored.pockets(stand, "worktop upper layer", "rabbet for router plate"))
                .containsExactly("79.7 134.7 380.3 365.3");
        assertThat(Bored.pockets(stand, "worktop lower layer", "rabbet for router plate"))
                .isEmpty();
        for (var part : List.of("worktop upper layer", "worktop lower layer")) {
            assertThat(Bored.pockets(stand, part, "opening under router plate"))
                    .containsExactly("94.0 149.0 366.0 351.0");
        }
        assertThat(Bored.pockets(stand, "sub-top", "opening under router plate"))
                .containsExactly("94.0 351.0 366.0 149.0");
        var rabbet = Bored.features(Bored.part(stand, "worktop upper layer"), Pocket.class)
                .get(0);
        assertThat(rabbet.face()).isEqualTo(Face.SHOW);
        assertThat(rabbet.depth()).hasValue(10.5);
        assertThat(rabbet.radius()).isEqualTo(12);
    }

    /** One at each corner, one at each side longer than 200: eight; all of them on the ledge. */
    @Test
    void levelsThePlateWithScrewsInItsLedge() {
        var stand = built(PLATE);
        var part = Bored.part(stand, "worktop upper layer");
        var pilots = Bored.features(part, Hole.class).stream()
                .filter(hole -> hole.purpose().equals("levelling screw pilot"))
                .toList();
        var opening = Bored.features(part, Pocket.class).get(1).area();
        var rabbet = Bored.features(part, Pocket.class).get(0).area();

        assertThat(pilots).hasSize(8).allSatisfy(pilot -> {
            double r = pilot.diameter() / 2;
            boolean onRabbet = pilot.x() - r > rabbet.x0()
                    && pilot.x() + r < rabbet.x1()
                    && pilot.y() - r > rabbet.y0()
                    && pilot.y() + r < rabbet.y1();
            boolean overOpening = pilot.x() + r > opening.x0()
                    && pilot.x() - r < opening.x1()
                    && pilot.y() + r > opening.y0()
                    && pilot.y() - r < opening.y1();
            assertThat(onRabbet && !overOpening).isTrue();
            assertThat(pilot.depth().orElseThrow()).isBetween(10.6, 17.9);
        });
        assertThat(new Top(frame(design(PLATE))).hardware())
                .contains(new Hardware("levelling screw for router plate", 8, "in the ledge under the plate"));
    }

    @Test
    void showsThePlateFlushWithTheWorktop() {
        var stand = built(PLATE);

        assertThat(stand.assembly().blocks())
                .filteredOn(block -> block.kind() == Block.Kind.PLATE)
                .singleElement()
                .satisfies(block -> {
                    assertThat(block.box().max().z())
                            .isEqualTo(stand.carcass().max().z() + 36);
                    assertThat(block.box().size().z()).isCloseTo(9.5, within(1e-9));
                });
    }

    @Test
    void screwsTheWorktopBesideThePlate() {
        var screws = new TopScrews(frame(design(PLATE)), built(PLATE).bays()).places();

        assertThat(screws).hasSizeGreaterThanOrEqualTo(8);
        assertThat(screws)
                .allSatisfy(screw -> assertThat(screw.x() > 79 - 14
                                && screw.x() < 381 + 14
                                && screw.y() > 134 - 14
                                && screw.y() < 366 + 14)
                        .isFalse());
    }

    @Test
    void makesClosedSolidsOfAllLayers() {
        var stand = built(PLATE);

        ClosedSolids.check(stand.assembly());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        16  | 14  | 12  | /worktop/plate        | Use a worktop sheet of 20 mm or more, or a plate of 14 mm or less.
        9.5 | 115 | 12  | /worktop/plate/ledge  | Make the ledge 57.5 mm or less.
        9.5 | 14  | 116 | /worktop/plate/radius | Make the radius 115 mm or less.
        """)
    void refusesAPlateThatLeavesNoWood(double thickness, double ledge, double radius, String field, String wayOut) {
        var plate = new PlateOpening("router plate", 230, 270, 300, 230, thickness, radius, 0.6, ledge);
        var refusal = catchThrowableOfType(ImpossibleDesignException.class, () -> built(plate));

        assertThat(refusal.field()).isEqualTo(field);
        assertThat(refusal).hasMessageContaining(wayOut);
    }

    /** The partition stands from 441 to 459; the rabbet reaches 150.3 to each side and 115.3 to front and back. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        400 | 270 | meets the partition                 | x 290.7 mm, y 270 mm
        170 | 270 | comes too near an edge              | x 170.3 mm, y 270 mm
        160 | 270 | meets the left side                 | x 170.3 mm, y 270 mm
        230 | 140 | meets the front edge of the sub-top | x 230 mm, y 155.3 mm
        230 | 480 | meets the back                      | x 230 mm, y 384.7 mm
        """)
    void refusesAPlateThatDoesNotHangInOneBay(double x, double y, String trouble, String wayOut) {
        var refusal = catchThrowableOfType(ImpossibleDesignException.class, () -> built(at(x, y)));

        assertThat(refusal.field()).isEqualTo("/worktop/plate");
        assertThat(refusal).hasMessageContaining(trouble).hasMessageContaining("Put its centre at " + wayOut + ".");
        built(at(Refusals.figure(refusal, "centre at x ([0-9.]+) mm"), Refusals.figure(refusal, "mm, y ([0-9.]+) mm")));
    }

    /** Drawers in bay 1 only: the plate goes over bay 2, its centre 459 + 150.3 from the left at least. */
    @Test
    void refusesAPlateOverDrawers() {
        var refusal = catchThrowableOfType(ImpossibleDesignException.class, () -> built(PLATE, true, false));

        assertThat(refusal.field()).isEqualTo("/worktop/plate");
        assertThat(refusal)
                .hasMessageContaining("bay 1 begins with drawers")
                .hasMessageContaining("Put its centre at x 609.3 mm, y 270 mm.")
                .hasMessageContaining("kind \"clear\", \"open\" or \"door\"");
        built(at(609.3, 270), true, false);
        assertThat(Refusals.of(design(PLATE)).field()).isEqualTo("/worktop/plate");
    }

    /** 290.7 would be free of the partition, but lies over drawers: the way out is over bay 2. */
    @Test
    void namesNoPlaceOverDrawers() {
        var refusal = catchThrowableOfType(ImpossibleDesignException.class, () -> built(at(400, 270), true, false));

        assertThat(refusal)
                .hasMessageContaining("meets the partition")
                .hasMessageContaining("Put its centre at x 609.3 mm, y 270 mm.");
    }

    private static PlateOpening at(double x, double y) {
        return new PlateOpening("router plate", x, y, 300, 230, 9.5, 12, 0.6, 14);
    }

    private static Stand built(PlateOpening plate) {
        return built(plate, false, false);
    }

    /** The stand of its two bays, each with drawers at its top or without. */
    private static Stand built(PlateOpening plate, boolean leftDrawers, boolean rightDrawers) {
        var design = design(plate);
        var plain = StandBuilder.build(Draft.of(
                design,
                draft -> draft.worktop = new Worktop(
                        design.worktop().sheet(), 2, design.worktop().overhang(), Optional.empty())));
        var bays = List.of(
                leftDrawers ? plain.bays().get(0) : clear(plain.bays().get(0)),
                rightDrawers ? plain.bays().get(1) : clear(plain.bays().get(1)));
        var frame = frame(design);
        var top = new Top(frame);
        var groups = new ArrayList<>(plain.assembly().groups());
        groups.removeIf(group -> group.name().equals("worktop"));
        groups.add(top.worktop());
        return new Stand(
                design,
                plain.stack(),
                plain.carcass(),
                bays,
                Optional.empty(),
                new Assembly("router table", top.cut(groups, bays), List.of()));
    }

    private static BayLayout clear(BayLayout bay) {
        return new BayLayout(bay.name(), bay.opening(), List.of(new SectionLayout.Clear(bay.opening(), "router")));
    }

    private static Frame frame(StandDesign design) {
        return new Frame(design, PlanSize.of(design), 76, 1000 - 36 - 76, List.of(423.0, 423.0));
    }

    private static StandDesign design(PlateOpening plate) {
        return TopDesigns.press(draft -> {
            draft.machine = Draft.OfMachine.of(
                    TopDesigns.PRESS, machine -> machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0));
            draft.plan(900, 500);
            draft.bays = List.of(bay(equal(3)), bay(equal(3)));
            draft.worktop = new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(20, 0, 0, 0), Optional.of(plate));
        });
    }
}
