package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.column.Mixed.open;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Cutout;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Joint;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Size2;
import org.standwright.design.stand.StandBuilder;

/** Fasteners of joints beside everything else that is bored into the same panels. */
class ButtCollisionsTest {
    private static final double LEAST_BAY = 100;
    /** Of a plate 250 mm wide, so that its blocks reach in below the first bay's partition. */
    private static final Support.Casters WIDE = new Support.Casters(
            new Caster("wide caster", 125, new Size2(250, 100), new Size2(220, 80), 9, 8, 85, 100, 80, true, 0.9),
            Optional.empty(),
            Support.Bed.STRIPS);

    static List<Joint> kinds() {
        return Butted.KINDS;
    }

    static Stream<Support> supports() {
        return Stream.of(
                WIDE,
                Designs.CASTERS,
                new Support.Casters(Designs.CASTERS.caster(), Designs.CASTERS.others(), Support.Bed.DOUBLED_BOTTOM),
                Designs.LEVELERS,
                new Support.Plinth(90, 75, 5));
    }

    /** A partition right above a row of block screws, in stands of many depths, so that some screws stand in the way. */
    @ParameterizedTest
    @MethodSource("supports")
    void clearsTheScrewsOfTheSupport(Support support) {
        var bare = Designs.stand(900, support, Mount.OVERLAY, List.of(bay(equal(3))));
        double screws = Bore.of(StandBuilder.build(bare)).stream()
                .filter(bore -> bore.part().equals("bottom"))
                .mapToDouble(bore -> bore.mouth()[0])
                .filter(x -> x >= 18 + LEAST_BAY + 9)
                .min()
                .orElseThrow();
        double first = Math.min(400, screws - 18 - 9);
        var design = Designs.stand(900, support, Mount.OVERLAY, List.of(bay(first, open()), bay(equal(3))));

        IntStream.range(0, 10).mapToDouble(step -> 520 + 7 * step).forEach(depth -> {
            for (var joint : Butted.KINDS) {
                hasWoodBetweenBores(StandBuilder.build(
                        Butted.with(joint, Draft.of(design, draft -> draft.plan(720, depth)))));
            }
        });
    }

    /** The middle fastener of the left side would come out in the cut-out, which begins 12 mm from the side. */
    @ParameterizedTest
    @MethodSource("kinds")
    void keepsOutOfWhatIsCutOutOfTheWorktop(Joint joint) {
        var stand = StandBuilder.build(Butted.with(joint, cut(60)));

        assertThat(ys(stand, "sub-top")).hasSizeGreaterThanOrEqualTo(4).noneMatch(y -> y > 277 - 30 && y < 277 + 30);
        assertThat(ys(stand, "bottom")).contains(277.0);
    }

    /**
     * The block's middle screw goes down at 560 / 2 = 280 mm, within 3 mm of wood of a joint screw at 277 mm: bores of
     * 4.5 mm take 7.5 mm from centre to centre. Two steps of 4 mm to the front are the first that do; what is left to
     * 504 mm is divided again.
     */
    @Test
    void movesAlongByStepsOfItsDiameter() {
        var design = Designs.stand(900, WIDE, Mount.OVERLAY, List.of(bay(equal(3))));
        double screws = Bore.of(StandBuilder.build(design)).stream()
                .filter(bore -> bore.purpose().equals("caster block screw"))
                .mapToDouble(bore -> bore.mouth()[0])
                .min()
                .orElseThrow();
        var stand = StandBuilder.build(Butted.with(
                Butted.SCREWS,
                Designs.stand(900, WIDE, Mount.OVERLAY, List.of(bay(screws - 27, open()), bay(equal(3))))));

        assertThat(Bore.of(stand).stream()
                        .filter(bore -> bore.purpose().equals("joint screw")
                                && bore.part().equals("bottom"))
                        .map(Bore::y))
                .containsExactly(50.0, 163.5, 269.0, 386.5, 504.0);
    }

    private static StandDesign cut(double deep) {
        var design = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3))));
        return Draft.of(
                design,
                draft -> draft.cutouts =
                        List.of(new Cutout.Rectangular("cord", Cutout.In.WORKTOP, 50, 277, 40, deep, 5)));
    }

    /** Of the fasteners at the left end, from the front back. */
    private static List<Double> ys(Stand stand, String part) {
        return Bore.of(stand).stream()
                .filter(Bore::isOfJoint)
                .filter(bore -> bore.inEdge() && bore.part().equals(part) && bore.mouth()[0] < 100)
                .map(Bore::y)
                .toList();
    }

    /** Between a joint's bore and any other of the same part, those of one step bore aside. */
    static void hasWoodBetweenBores(Stand stand) {
        var bores = Bore.of(stand);
        for (var joint : bores) {
            if (joint.isOfJoint()) {
                assertThat(bores).as(joint.purpose() + " in " + joint.part()).allSatisfy(other -> {
                    boolean stepped = other.isOfJoint() && other.isInLineWith(joint) && other.way() == joint.way();
                    if (other.part().equals(joint.part()) && !stepped) {
                        assertThat(joint.apart(other))
                                .as("%s at %s", other.purpose(), other.y())
                                .isGreaterThanOrEqualTo(0.5 - 1e-6);
                    }
                });
            }
        }
    }
}
