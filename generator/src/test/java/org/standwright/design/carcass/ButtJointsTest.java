package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Designs;
import org.standwright.design.Joint;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.ClosedSolids;

/** A 720 x 560 stand, 593 high between blocks and worktop, of 18 mm sheet with a back of 6 mm, in every butted kind. */
class ButtJointsTest {
    private static final StandDesign ONE_BAY =
            Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));
    private static final StandDesign TWO_BAYS = Designs.planerStand();

    static List<Joint> kinds() {
        return Butted.KINDS;
    }

    /** 720 - 2 x 18 = 684; 560 - 6 = 554; 593 - 2 x 18 = 557. */
    @ParameterizedTest
    @MethodSource("kinds")
    void cutsEveryPanelToMeetTheOthersBluntly(Joint joint) {
        var stand = StandBuilder.build(Butted.with(joint, TWO_BAYS));

        assertThat(box(stand, "left side")).isEqualTo("0 0 161 to 18 554 754");
        assertThat(box(stand, "right side")).isEqualTo("702 0 161 to 720 554 754");
        assertThat(box(stand, "bottom")).isEqualTo("18 0 161 to 702 554 179");
        assertThat(box(stand, "sub-top")).isEqualTo("18 0 736 to 702 554 754");
        assertThat(box(stand, "partition")).isEqualTo("418 0 179 to 436 554 736");
        assertThat(box(stand, "back")).isEqualTo("0 554 161 to 720 560 754");
    }

    @Test
    void leavesEveryOpeningAndDrawerAsTheyAreInAHousedCarcass() {
        for (var design : List.of(ONE_BAY, TWO_BAYS)) {
            var housed = StandBuilder.build(design);
            for (var joint : Butted.KINDS) {
                var butted = StandBuilder.build(Butted.with(joint, design));

                assertThat(butted.bays()).isEqualTo(housed.bays());
                assertThat(butted.stack()).isEqualTo(housed.stack());
                assertThat(butted.carcass()).isEqualTo(housed.carcass());
            }
        }
    }

    /** 50 mm from either end and four steps of 113.5 mm between: 50 + 4 x 113.5 + 50 = 554. */
    @ParameterizedTest
    @MethodSource("kinds")
    void putsFiveFastenersIntoEveryJoint(Joint joint) {
        var stand = StandBuilder.build(Butted.with(joint, ONE_BAY));

        assertThat(inEdges(stand).stream()
                        .filter(bore -> bore.part().equals("bottom") && bore.mouth()[0] < 100)
                        .map(Bore::y))
                .containsExactly(50.0, 163.5, 277.0, 390.5, 504.0);
        assertThat(inEdges(stand)).hasSize(4 * 5);
        assertThat(inEdges(StandBuilder.build(Butted.with(joint, TWO_BAYS)))).hasSize(6 * 5);
    }

    /**
     * A screw of 50 mm is the longest within three panels: 32 mm beyond the first. Dowels of 8 x 30 mm with 1 mm of
     * room (references 7.3, from memory, unconfirmed): 12 mm in the face, which leaves 6 mm, and 19 mm in the end. A
     * connector of 7 x 50 mm with bores of 5, 7 and 10 mm (references 7.3, guides and memory): 32 mm and 2 mm of room.
     */
    @Test
    void boresAsDeepAsEachFastenerNeeds() {
        assertThat(sizes(Butted.SCREWS)).containsExactly("joint screw 4.5 x 18.0", "joint screw pilot 2.5 x 32.0");
        assertThat(sizes(Butted.DOWELS)).containsExactly("dowel 8.0 x 12.0", "dowel 8.0 x 19.0");
        assertThat(sizes(Butted.CONNECTORS))
                .containsExactly("connector 5.0 x 34.0", "connector 7.0 x 18.0", "connector head 10.0 x 4.0");
    }

    @Test
    void countsTheFastenersByTheirHoles() {
        assertThat(hardware(Butted.SCREWS)).contains("30 screw 4 x 50 mm");
        assertThat(hardware(Butted.DOWELS)).contains("30 dowel 8 x 30");
        assertThat(hardware(Butted.CONNECTORS)).contains("30 connector 7 x 50");
    }

    @Test
    void gluesDowelsButNothingThatComesApart() {
        assertThat(glued(Butted.DOWELS)).contains("dowels");
        assertThat(glued(Butted.CONNECTORS)).contains("none between connected panels");
        assertThat(glued(new Joint.Housed())).isEqualTo("all housings, boxes and layers");
    }

    @ParameterizedTest
    @MethodSource("stands")
    void goesOnInTheFaceWhereItComesOutOfTheEnd(Joint joint, StandDesign design) {
        var bores = Bore.of(StandBuilder.build(Butted.with(joint, design)));
        var joints = bores.stream().filter(Bore::isOfJoint).toList();

        assertThat(joints.stream().filter(Bore::inEdge))
                .isNotEmpty()
                .allSatisfy(end -> assertThat(joints)
                        .filteredOn(
                                face -> !face.inEdge() && !face.purpose().equals("connector head") && face.meets(end))
                        .as("%s in %s at y %s", end.purpose(), end.part(), end.y())
                        .singleElement()
                        .satisfies(face -> {
                            assertThat(face.part()).isNotEqualTo(end.part());
                            double met = end.mouth()[end.way()];
                            assertThat(end.forward() ? face.high() : face.low()).isCloseTo(met, within(1e-9));
                        }));
    }

    /** Both ends of a row and the distance between neighbours are common practice, no source. */
    @ParameterizedTest
    @MethodSource("stands")
    void standsNoFartherApartThanItHolds(Joint joint, StandDesign design) {
        double most = joint instanceof Joint.Doweled ? 128 : 150;
        var ends = inEdges(StandBuilder.build(Butted.with(joint, design)));
        for (var first : ends) {
            var row = ends.stream()
                    .filter(end -> end.part().equals(first.part())
                            && end.way() == first.way()
                            && Math.abs(end.mouth()[end.way()] - first.mouth()[first.way()]) < 1e-6)
                    .mapToDouble(Bore::y)
                    .sorted()
                    .toArray();
            assertThat(row.length).isGreaterThanOrEqualTo(2);
            assertThat(row[0]).isGreaterThanOrEqualTo(50);
            assertThat(row[row.length - 1])
                    .isLessThanOrEqualTo(design.plan().depth().orElseThrow() - 6 - 50);
            for (int i = 1; i < row.length; i++) {
                assertThat(row[i] - row[i - 1]).isLessThanOrEqualTo(most + 1e-6).isGreaterThanOrEqualTo(12);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("stands")
    void standsWithoutOnePartInAnotherAndWithWoodBetweenBores(Joint joint, StandDesign design) {
        var stand = StandBuilder.build(Butted.with(joint, design));

        Clearances.check(stand.assembly());
        ButtCollisionsTest.hasWoodBetweenBores(stand);
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void isMadeOfClosedSolids(Joint joint) {
        ClosedSolids.check(StandBuilder.build(Butted.with(joint, TWO_BAYS)).assembly());
    }

    static Stream<Arguments> stands() {
        var designs = Stream.concat(Stream.of(ONE_BAY, TWO_BAYS), MixedStandsTest.designs())
                .toList();
        return Butted.KINDS.stream().flatMap(joint -> designs.stream().map(design -> Arguments.of(joint, design)));
    }

    private static List<Bore> inEdges(Stand stand) {
        return Bore.of(stand).stream()
                .filter(Bore::isOfJoint)
                .filter(Bore::inEdge)
                .toList();
    }

    private static List<String> sizes(Joint joint) {
        return Bore.of(StandBuilder.build(Butted.with(joint, TWO_BAYS))).stream()
                .filter(Bore::isOfJoint)
                .map(bore -> bore.purpose() + " " + 2 * bore.r() + " x " + bore.deep())
                .distinct()
                .sorted()
                .toList();
    }

    private static List<String> hardware(Joint joint) {
        return StandBuilder.build(Butted.with(joint, TWO_BAYS)).assembly().hardware().stream()
                .map(line -> line.count() + " " + line.item())
                .toList();
    }

    private static String glued(Joint joint) {
        return StandBuilder.build(Butted.with(joint, TWO_BAYS)).assembly().hardware().stream()
                .filter(line -> line.item().equals("wood glue"))
                .findFirst()
                .orElseThrow()
                .use();
    }

    private static String box(Stand stand, String label) {
        var box = stand.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .map(PlacedPart::box)
                .findFirst()
                .orElseThrow();
        return String.format(
                Locale.ROOT,
                "%.0f %.0f %.0f to %.0f %.0f %.0f",
                box.min().x(),
                box.min().y(),
                box.min().z(),
                box.max().x(),
                box.max().y(),
                box.max().z());
    }
}
