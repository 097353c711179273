package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Pocket;

class PocketSolidsTest {
    private static final double BOARD = 600.0 * 400 * 18;

    private static Pocket pocket(double radius, double depth, Vec2... corners) {
        return new Pocket(Face.SHOW, new Outline(Arrays.asList(corners)), radius, OptionalDouble.of(depth), "pocket");
    }

    /** For a key that holds a crack together: 60 mm wide at both ends, 20 mm in its middle. */
    private static Pocket bowTie(double radius) {
        return pocket(
                radius,
                6,
                new Vec2(100, 100),
                new Vec2(150, 120),
                new Vec2(200, 100),
                new Vec2(200, 160),
                new Vec2(150, 140),
                new Vec2(100, 160));
    }

    @Test
    void aPocketMayGetNarrowAndWideAgain() {
        var solid = Solids.of(SampleParts.plain().with(bowTie(0)));

        // two trapezoids
        assertThat(solid.volume()).isCloseTo(BOARD - 2 * 50 * (60 + 20) / 2.0 * 6, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(8 + 2 * 6);
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aSharpCornerLosesMoreToItsRadiusThanASquareOne() {
        var solid = Solids.of(SampleParts.plain().with(bowTie(5)));

        // between the sides of a corner and the circle that touches both: r² (cot(a / 2) - (pi - a) / 2)
        double angle = Math.atan2(50, 20);
        double corner = 5 * 5 * (1 / Math.tan(angle / 2) - (Math.PI - angle) / 2);
        assertThat(solid.volume()).isCloseTo(BOARD - (4000 - 4 * corner) * 6, within(0.5));
    }

    @Test
    void aDovetailOpensAtItsEdge() {
        var solid = Solids.of(SampleParts.plain()
                .with(pocket(0, 9, new Vec2(100, 0), new Vec2(160, 0), new Vec2(180, 40), new Vec2(80, 40))));

        assertThat(solid.volume()).isCloseTo(BOARD - (60 + 100) / 2.0 * 40 * 9, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(8 + 2 * 4);
    }

    @Test
    void aCornerThatPointsIntoThePocketStaysSharp() {
        var up = ReadBack.of(Solids.of(SampleParts.plain()
                        .with(pocket(
                                10,
                                9,
                                new Vec2(100, 100),
                                new Vec2(200, 100),
                                new Vec2(200, 140),
                                new Vec2(140, 140),
                                new Vec2(140, 200),
                                new Vec2(100, 200)))))
                .upwardAreas();

        double corner = (1 - Math.PI / 4) * 10 * 10;
        assertThat(up.get(9f)).isCloseTo(100 * 40 + 40 * 60 - 5 * corner, within(0.2));
    }

    @Test
    void aNotchOverACornerOfTheBoardHasOneRoundCorner() {
        var solid = Solids.of(SampleParts.plain().with(Pocket.through(new Rect(520, 300, 600, 400), 10, "leg")));

        double corner = (1 - Math.PI / 4) * 10 * 10;
        assertThat(solid.volume()).isCloseTo(BOARD - (80 * 100 - corner) * 18, within(0.5));
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aHalfLapAtAnEndIsSquareAllRound() {
        var solid = Solids.of(
                SampleParts.plain().with(Pocket.blind(Face.SHOW, new Rect(540, 0, 600, 400), 10, 9, "half-lap")));

        assertThat(solid.volume()).isCloseTo(BOARD - 60 * 400 * 9, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(12);
        assertThat(solid.triangleCount()).isEqualTo(20);
    }

    @Test
    void aDiagonalDadoIsAParallelogramFromEdgeToEdge() {
        var solid = Solids.of(SampleParts.plain()
                .with(pocket(5, 9, new Vec2(100, 0), new Vec2(150, 0), new Vec2(350, 400), new Vec2(300, 400))));
        var up = ReadBack.of(solid).upwardAreas();

        assertThat(solid.volume()).isCloseTo(BOARD - 50 * 400 * 9, within(1e-6));
        assertThat(up.get(9f)).isCloseTo(50 * 400, within(1e-6));
        assertThat(solid.vertexCount()).isEqualTo(16);
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2);
    }

    @Test
    void aCutoutFromEdgeToEdgeLeavesTwoBoards() {
        var solid = Solids.of(SampleParts.plain().with(Pocket.through(new Rect(300, 0, 320, 400), 5, "saw cut")));

        assertThat(solid.vertexCount()).isEqualTo(16);
        assertThat(solid.triangleCount()).isEqualTo(24);
        assertThat(ReadBack.of(solid).euler()).isEqualTo(2 + 2);
    }

    @Test
    void channelsOfBothFacesThatCrossDeeplyOpenAWindow() {
        var solid = Solids.of(SampleParts.plain()
                .with(Channel.across(Face.SHOW, 100, 120, 400, 10), Channel.along(Face.BENCH, 190, 210, 600, 10)));

        // where they cross both have taken the middle 2 mm
        double removed = 20 * 400 * 10 + 20 * 600 * 10 - 20 * 20 * 2;
        assertThat(solid.volume()).isCloseTo(BOARD - removed, within(1e-6));
        assertThat(ReadBack.of(solid).euler()).isZero();
    }

    @Test
    void seventyPocketsMayHaveSeventyDepths() {
        var pockets = new ArrayList<Feature>();
        for (int i = 0; i < 70; i++) {
            double x = 20 + 50 * (i % 10);
            double y = 20 + 50.0 * (i / 10);
            pockets.add(Pocket.blind(Face.SHOW, new Rect(x, y, x + 10, y + 10), 0, 0.25 * (i + 1), "pocket"));
        }
        var solid = Solids.of(SampleParts.plain().with(pockets));

        // 1 + 2 + … + 70 quarters of a millimetre
        assertThat(solid.volume()).isCloseTo(BOARD - 10 * 10 * 0.25 * 70 * 71 / 2, within(1e-6));
        assertThat(ReadBack.of(solid).upwardAreas()).hasSize(71);
        assertThat(solid.vertexCount()).isEqualTo(8 + 8 * 70);
    }
}
