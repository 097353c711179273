package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Part;
import org.standwright.part.Recess;

class BevelSolidsTest {
    private static final double BOARD = 600.0 * 400 * 18;
    /** Section of the wedge that a bevel of 45° takes all through the thickness, mm². */
    private static final double WEDGE = 18.0 * 18 / 2;

    @Test
    void aCleatIsAsLongAsItIsTimesTheMeanOfItsFaces() {
        var cleat = Part.blank("cleat", SampleParts.PLYWOOD, 600, 80).with(new Bevel(Edge.Y1, Face.SHOW, 45, 18));
        var solid = Solids.of(cleat);

        assertThat(solid.vertexCount()).isEqualTo(8);
        assertThat(solid.triangleCount()).isEqualTo(12);
        assertThat(solid.volume()).isCloseTo(600 * (80 + 62) / 2.0 * 18, within(1e-6));
        assertThat(ReadBack.of(solid).upwardAreas().get(18f)).isCloseTo(600 * 62, within(1e-6));
        // centroid of a trapezoid with sides a and b, h apart: h (a + 2 b) / 3 (a + b) from a
        var at = solid.centroid();
        assertThat(at.x()).isCloseTo(300, within(1e-9));
        assertThat(at.y()).isCloseTo((80.0 * 80 + 80 * 62 + 62 * 62) / (3 * (80 + 62)), within(1e-9));
        assertThat(at.z()).isCloseTo(18 * (80 + 2.0 * 62) / (3 * (80 + 62)), within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(Edge.class)
    void aBevelMovesItsOwnEdgeBackOnItsOwnFace(Edge edge) {
        for (var face : Face.values()) {
            var solid = Solids.of(SampleParts.plain().with(new Bevel(edge, face, 45, 18)));
            double along = edge.isEnd() ? 400 : 600;
            double removed = WEDGE * along;

            assertThat(solid.volume()).isCloseTo(BOARD - removed, within(1e-6));
            // a wedge's centroid lies a third of the way in from its edge and its face
            double in = edge.isFar() ? (edge.isEnd() ? 600 : 400) - 6 : 6;
            double up = face == Face.SHOW ? 12 : 6;
            var wedge = edge.isEnd() ? new Vec3(in, 200, up) : new Vec3(300, in, up);
            var moment = new Vec3(300, 200, 9).times(BOARD).plus(wedge.times(-removed));
            var expected = moment.times(1 / (BOARD - removed));
            var off = solid.centroid().minus(expected);
            assertThat(Math.abs(off.x()) + Math.abs(off.y()) + Math.abs(off.z()))
                    .isLessThan(1e-9);
        }
    }

    @Test
    void aChamferTakesATriangleAlongItsEdge() {
        var solid = Solids.of(SampleParts.plain().with(new Bevel(Edge.X1, Face.BENCH, 45, 3)));

        assertThat(solid.vertexCount()).isEqualTo(10);
        assertThat(solid.triangleCount()).isEqualTo(16);
        assertThat(solid.volume()).isCloseTo(BOARD - 3 * 3 / 2.0 * 400, within(1e-6));
    }

    @Test
    void anyTiltTakesHalfItsDepthTimesItsSetback() {
        var bevel = new Bevel(Edge.Y0, Face.SHOW, 30, 18);

        // tan 30° = 1 / √3
        double removed = 18 * 18 / Math.sqrt(3) / 2 * 600;
        assertThat(Solids.of(SampleParts.plain().with(bevel)).volume()).isCloseTo(BOARD - removed, within(3.0));
    }

    @Test
    void bevelsOnTwoEdgesMeetInAMitre() {
        var solid = Solids.of(
                SampleParts.plain().with(new Bevel(Edge.X0, Face.SHOW, 45, 18), new Bevel(Edge.Y0, Face.SHOW, 45, 18)));

        // both wedges take the pyramid at the corner: a third of its cube
        double removed = WEDGE * (400 + 600) - 18.0 * 18 * 18 / 3;
        assertThat(solid.volume()).isCloseTo(BOARD - removed, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(8);
        assertThat(solid.triangleCount()).isEqualTo(12);
    }

    @Test
    void bevelsOfOppositeFacesMeetInAWedge() {
        var solid = Solids.of(SampleParts.plain()
                .with(new Bevel(Edge.X0, Face.SHOW, 45, 18), new Bevel(Edge.Y0, Face.BENCH, 45, 18)));

        // z by 18 - z at each height, summed over the thickness: a sixth of the cube
        double removed = WEDGE * (400 + 600) - 18.0 * 18 * 18 / 6;
        assertThat(solid.volume()).isCloseTo(BOARD - removed, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(8);
        assertThat(solid.triangleCount()).isEqualTo(12);
    }

    @Test
    void bevelsAllRoundLeaveAPrismatoid() {
        var part = SampleParts.plain();
        for (var edge : Edge.values()) {
            part = part.with(new Bevel(edge, Face.SHOW, 45, 18));
        }

        // the prismatoid formula: height / 6 times bottom, top and four times the middle
        double expected = 18 / 6.0 * (600 * 400 + 4 * 582 * 382 + 564 * 364);
        assertThat(Solids.of(part).volume()).isCloseTo(expected, within(1e-6));
    }

    @Test
    void aHoleThroughASlopeIsAsDeepAsTheBoardIsThickAtItsMiddle() {
        var solid = Solids.of(
                SampleParts.plain().with(new Bevel(Edge.X0, Face.SHOW, 45, 18), Hole.through(9, 200, 10, "wire")));

        assertThat(solid.volume()).isCloseTo(BOARD - WEDGE * 400 - Math.PI * 25 * 9, within(0.1));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }

    /** So many that the kernel gets them in several cells; each loses to the bevel what the bevel takes from it. */
    @Test
    void aLongCleatHasItsCountersinksInItsBevel() {
        int count = 40;
        var screws = IntStream.range(0, count)
                .mapToObj(i -> Hole.through(20 + 24.0 * i, 78, 5, "screw").with(new Recess.Countersink(10, 90)))
                .toList();
        var cleat = Part.blank("cleat", SampleParts.PLYWOOD, 20 + 24 * count, 100)
                .with(new Bevel(Edge.Y1, Face.SHOW, 45, 18))
                .with(screws);
        var solid = Solids.of(cleat);

        double expected = LayeredVolume.of(cleat);
        assertThat(solid.volume()).isCloseTo(expected, within(1 + 1e-6 * expected));
        assertThat(ReadBack.of(solid).openEdges()).isZero();
        // a handle for each hole
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2 - 2 * count);
    }
}
