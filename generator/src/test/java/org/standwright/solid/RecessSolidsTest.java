package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.geom.Outline;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Hole;
import org.standwright.part.Recess;

class RecessSolidsTest {
    private static final double BOARD = 600.0 * 400 * 18;
    /** From 10 mm at the face to 5 mm, so 2.5 mm deep. */
    private static final Recess CONE = new Recess.Countersink(10, 90);

    private static final Recess FLAT = new Recess.Counterbore(26, 9);
    /** Of a countersunk hole of 5 mm right through the board: pi h (R² + R r + r²) / 3, and its cylinder. */
    private static final double SUNK = frustum(5, 2.5, 2.5) + Math.PI * 2.5 * 2.5 * 15.5;

    private static double frustum(double r0, double r1, double height) {
        return Math.PI * height * (r0 * r0 + r0 * r1 + r1 * r1) / 3;
    }

    @ParameterizedTest
    @EnumSource(Face.class)
    void aCountersunkHoleIsACylinderBelowAFrustum(Face face) {
        var hole = Hole.blind(face, 300, 200, 5, 12, "screw").with(CONE);
        var solid = Solids.of(SampleParts.plain().with(hole));

        double expected = frustum(5, 2.5, 2.5) + Math.PI * 2.5 * 2.5 * 9.5;
        assertThat(BOARD - solid.volume()).isCloseTo(expected, within(0.1));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aCountersunkThroughHoleHasOneHandleAndNoStep() {
        var solid = Solids.of(
                SampleParts.plain().with(Hole.through(300, 200, 5, "screw").with(CONE)));
        var read = ReadBack.of(solid);

        assertThat(BOARD - solid.volume()).isCloseTo(SUNK, within(0.1));
        assertThat(read.euler()).isZero();
        assertThat(read.upwardAreas().keySet()).containsExactly(18f);
        assertThat(read.upwardAreas().get(18f)).isCloseTo(600 * 400 - Math.PI * 25, within(0.05));
    }

    @Test
    void aCountersinkOnAContourIsHalfOne() {
        var outline = new Outline(List.of(new Vec2(0, 0), new Vec2(600, 0), new Vec2(600, 150), new Vec2(0, 150)));
        var solid = Solids.of(SampleParts.plain()
                .with(
                        new Contour(outline, "strip"),
                        Hole.through(300, 150, 5, "screw").with(CONE)));

        assertThat(600 * 150 * 18 - solid.volume()).isCloseTo(SUNK / 2, within(0.1));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aCountersinkOnTheEdgeOfAGrooveLosesHalfOfItsTop() {
        var solid = Solids.of(SampleParts.plain()
                .with(
                        Channel.along(Face.SHOW, 200, 220, 600, 1),
                        Hole.through(300, 200, 5, "screw").with(CONE)));

        // 1 mm down the cone is 4 mm in radius
        double common = frustum(5, 4, 1) / 2;
        assertThat(BOARD - solid.volume()).isCloseTo(600 * 20 + SUNK - common, within(0.1));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }

    @Test
    void aCountersinkUnderAGrooveThatIsDeeperIsGone() {
        var solid = Solids.of(SampleParts.plain()
                .with(
                        Channel.along(Face.SHOW, 190, 210, 600, 4),
                        Hole.through(300, 200, 5, "screw").with(CONE)));

        assertThat(BOARD - solid.volume()).isCloseTo(600 * 20 * 4 + Math.PI * 2.5 * 2.5 * 14, within(0.1));
    }

    @Test
    void aCounterboreIsAWideFloorRoundItsHole() {
        var solid = Solids.of(
                SampleParts.plain().with(Hole.through(300, 200, 9, "bolt").with(FLAT)));
        var up = ReadBack.of(solid).upwardAreas();

        assertThat(up.keySet()).containsExactly(9f, 18f);
        assertThat(up.get(9f)).isCloseTo(Math.PI * (13 * 13 - 4.5 * 4.5), within(0.1));
        assertThat(BOARD - solid.volume()).isCloseTo(Math.PI * 9 * (13 * 13 + 4.5 * 4.5), within(0.5));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }

    @Test
    void aCounterboreFromBelowLooksDown() {
        var hole = Hole.blind(Face.BENCH, 300, 200, 9, 12, "bolt").with(FLAT);
        var solid = Solids.of(SampleParts.plain().with(hole));

        // what looks up is the show face alone
        assertThat(ReadBack.of(solid).upwardAreas().keySet()).containsExactly(18f);
        assertThat(BOARD - solid.volume()).isCloseTo(Math.PI * (9 * 13 * 13 + 3 * 4.5 * 4.5), within(0.5));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }
}
