package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.column.Mixed.divided;
import static org.standwright.design.column.Mixed.door;
import static org.standwright.design.column.Mixed.open;
import static org.standwright.design.column.Mixed.shelved;
import static org.standwright.design.column.Mixed.stand;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Edges;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Joint;
import org.standwright.design.Mount;
import org.standwright.design.Shelves.Kind;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Edging;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Vec3;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;

/** Which panels stand between the openings, and what is cut into them; carcass 720 x 560 of 18 mm, fit 0.15 mm. */
class CarcassMakerTest {
    @Test
    void namesEveryPanelOnce() {
        var stand = StandBuilder.build(stand(
                Mount.OVERLAY,
                bay(equal(1), divided(bay(open()), bay(open())), shelved(Kind.FIXED, 1)),
                bay(shelved(Kind.ADJUSTABLE, 1))));

        assertThat(carcass(stand).map(PlacedPart::label))
                .containsExactly(
                        "left side",
                        "right side",
                        "bottom",
                        "sub-top",
                        "partition",
                        "partition 1a",
                        "divider 1.1",
                        "divider 1.2",
                        "shelf 1.1",
                        "shelf 2.1",
                        "back");
    }

    /** Shop practice: two panels that meet a partition from both sides at one height leave a web of 6 mm or more. */
    @Test
    void leavesAWebBetweenDividersThatMeetAPartitionAtOneHeight() {
        var design = carcass(stand(Mount.OVERLAY, bay(open(), open()), bay(open(), open())), Designs.BOARD_18, 8);
        var stand = StandBuilder.build(design);

        var dados = channels(part(stand, "partition"));
        assertThat(dados).extracting(Channel::face).containsExactly(Face.SHOW, Face.BENCH);
        assertThat(dados).extracting(Channel::depth).containsExactly(6.0, 6.0);
        assertThat(dados.get(0).area()).isEqualTo(dados.get(1).area());
        assertThat(dados.get(0).width()).isCloseTo(18.15, within(1e-9));
        // the left opening is (720 - 54) / 2 = 333 wide: 8 into the side, 6 into the partition
        assertThat(part(stand, "divider 1.1").length()).isEqualTo(333 + 8 + 6);
        assertThat(channels(part(stand, "left side")).get(3).depth()).isEqualTo(8);
    }

    @Test
    void housesNestedPartitionsInTheDividersAboveAndBelow() {
        var stand = StandBuilder.build(carcass(
                stand(Mount.OVERLAY, bay(divided(bay(open()), bay(open())), divided(bay(open()), bay(open())))),
                Designs.BOARD_18,
                8));

        var divider = channels(part(stand, "divider 1.1"));
        assertThat(divider).extracting(Channel::face).containsExactly(Face.SHOW, Face.BENCH);
        assertThat(divider).extracting(Channel::depth).containsExactly(6.0, 6.0);
        // (557 - 18) / 2 = 269.5 between the levels: 8 into the sub-top or the bottom, 6 into the divider
        assertThat(part(stand, "partition 1a").length()).isCloseTo(269.5 + 14, within(1e-9));
        assertThat(part(stand, "partition 1c").length()).isCloseTo(269.5 + 14, within(1e-9));
    }

    @Test
    void refusesAPanelTooThinForDadosFromBothFaces() {
        var plinth = Draft.of(
                stand(Mount.OVERLAY, bay(open(), open()), bay(open())), draft -> draft.support = new Support.None(5));
        var thin = carcass(plinth, Designs.sheet("board 9", 9, 2440, 1220), 3);

        assertThatThrownBy(() -> StandBuilder.build(thin))
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refused -> assertThat(refused.field()).isEqualTo("/carcass/sheet"))
                .hasMessageContaining("Use a sheet of 10 mm or more.");
        StandBuilder.build(carcass(plinth, Designs.sheet("board 10", 10, 2440, 1220), 3));
    }

    /** Guides to the 32 mm system: holes of 5 mm, 32 mm apart, the first row 37 mm from the front edge. */
    @Test
    void boresRowsForPinsOnThe32MillimetreGrid() {
        var stand = StandBuilder.build(
                stand(Mount.OVERLAY, bay(shelved(Kind.ADJUSTABLE, 2)), bay(shelved(Kind.ADJUSTABLE, 1))));

        var holes = pins(part(stand, "left side"));
        // from the lower end: 18 for the bottom, then 96; the opening of 557 ends the rows 96 below its upper edge
        var heights = new TreeSet<>(holes.stream().map(Hole::x).toList());
        assertThat(heights.first()).isCloseTo(18 + 96, within(1e-9));
        assertThat(heights).hasSize(12);
        assertThat(heights.last() - heights.first()).isCloseTo(11 * 32, within(1e-9));
        assertThat(new TreeSet<>(holes.stream().map(Hole::y).toList())).containsExactly(37.0, 560.0 - 6 - 37);
        assertThat(holes).allMatch(hole -> hole.diameter() == 5 && hole.depthIn(18) == 10);
        // from both faces of a partition less than its half
        assertThat(pins(part(stand, "partition"))).hasSize(48).allMatch(hole -> hole.depthIn(18) == 8.5);
    }

    /** Guides to the 32 mm system: 37 mm and the thickness of an inset front. */
    @Test
    void setsTheFirstRowBackByAnInsetDoorAndKeepsItOffTheHinges() {
        var stand = StandBuilder.build(stand(Mount.INSET, bay(door(Hung.LEFT, Kind.ADJUSTABLE, 1))));

        var holes = pins(part(stand, "left side"));
        assertThat(new TreeSet<>(holes.stream().map(Hole::y).toList())).containsExactly(55.0, 517.0);
        // the hinge at 103 above the opening takes 25 above and below it, and 7.5 of wood
        assertThat(holes.stream().mapToDouble(hole -> hole.x() - 18).min()).hasValue(160);
    }

    @Test
    void coversTheFrontEdgesOfFixedPanelsOnly() {
        var tape = new Edging("tape 1", Edging.Kind.TAPE, 1);
        var design = Draft.of(
                stand(Mount.OVERLAY, bay(shelved(Kind.FIXED, 1), open()), bay(shelved(Kind.ADJUSTABLE, 1))),
                draft -> draft.edges = new Edges(Optional.of(tape), Optional.empty(), Designs.NO_EDGES.worktop()));
        var stand = StandBuilder.build(design);

        for (var label :
                List.of("left side", "right side", "bottom", "sub-top", "partition", "divider 1.1", "shelf 1.1")) {
            var part = part(stand, label);
            assertThat(part.cutWidth()).as(label).isEqualTo(part.width() - 1);
            assertThat(part.cutLength()).as(label).isEqualTo(part.length());
            // the front edge lies at the front of the carcass
            var placed = carcass(stand)
                    .filter(one -> one.label().equals(label))
                    .findFirst()
                    .orElseThrow();
            double front = part.bands().y0().isPresent() ? 0 : part.width();
            assertThat(placed.placement().apply(new Vec3(0, front, 0)).y())
                    .as(label)
                    .isCloseTo(0, within(1e-9));
        }
        assertThat(part(stand, "shelf 2.1").cutWidth()).isEqualTo(560 - 6 - 20);
        assertThat(part(stand, "back").cutWidth()).isEqualTo(part(stand, "back").width());
    }

    /** Shop practice: less than half a partition that carries slides on both faces. */
    @Test
    void boresSlidesOfNestedBaysIntoTheirOwnPartition() {
        var stand = StandBuilder.build(stand(Mount.OVERLAY, bay(open(), divided(bay(equal(1)), bay(equal(2))))));

        var holes = holes(part(stand, "partition 1a"), "slide pilot");
        assertThat(holes.stream().filter(hole -> hole.face() == Face.SHOW)).hasSize(3);
        assertThat(holes.stream().filter(hole -> hole.face() == Face.BENCH)).hasSize(6);
        assertThat(holes).allMatch(hole -> hole.depthIn(18) < 9);
        assertThat(holes(part(stand, "left side"), "slide pilot")).hasSize(3);
        assertThat(holes(part(stand, "right side"), "slide pilot")).hasSize(6);
    }

    private static StandDesign carcass(StandDesign design, SheetGood sheet, double housing) {
        return Draft.of(
                design,
                draft -> draft.carcass =
                        new CarcassPlan(sheet, draft.carcass.back(), housing, draft.carcass.fit(), new Joint.Housed()));
    }

    private static Stream<PlacedPart> carcass(Stand stand) {
        return stand.assembly().groups().stream()
                .filter(group -> group.name().equals("carcass"))
                .flatMap(group -> group.parts().stream());
    }

    private static Part part(Stand stand, String label) {
        return carcass(stand)
                .filter(placed -> placed.label().equals(label))
                .findFirst()
                .orElseThrow()
                .part();
    }

    private static List<Channel> channels(Part part) {
        return part.features().stream()
                .filter(Channel.class::isInstance)
                .map(Channel.class::cast)
                .toList();
    }

    private static List<Hole> pins(Part part) {
        return holes(part, "shelf pin");
    }

    private static List<Hole> holes(Part part, String purpose) {
        return part.features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .filter(hole -> hole.purpose().equals(purpose))
                .toList();
    }
}
