package org.standwright.viewer.scene.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Vec3;

class LeastDistanceTest {
    @Test
    void noPointsOfTwoTrianglesAreNearerThanItSays() {
        var random = new SplittableRandom(7);
        for (int run = 0; run < 300; run++) {
            var a = triangle(random);
            var b = triangle(random);

            var least = LeastDistance.between(List.of(a), List.of(b));

            double sampled = sampled(a, b);
            assertThat(least.length()).isLessThanOrEqualTo(sampled + 1e-9).isCloseTo(sampled, within(6.0));
            assertThat(offPlane(a, least.from())).isLessThan(1e-9);
            assertThat(offPlane(b, least.to())).isLessThan(1e-9);
        }
    }

    @Test
    void trianglesThatGoThroughEachOtherAreNoDistanceApart() {
        var level = new Triangle(new Vec3(-50, -50, 0), new Vec3(50, -50, 0), new Vec3(0, 80, 0));
        var upright = new Triangle(new Vec3(0, 0, -30), new Vec3(10, 0, 40), new Vec3(-10, 0, 40));

        assertThat(LeastDistance.between(List.of(level), List.of(upright)).length())
                .isZero();
    }

    @Test
    void aCornerOverTheInsideOfATriangleIsNearestThere() {
        var level = new Triangle(new Vec3(-50, -50, 0), new Vec3(50, -50, 0), new Vec3(0, 80, 0));
        var above = new Triangle(new Vec3(0, 0, 12), new Vec3(10, 0, 40), new Vec3(-10, 5, 40));

        assertThat(LeastDistance.between(List.of(level), List.of(above)))
                .isEqualTo(new Segment(new Vec3(0, 0, 0), new Vec3(0, 0, 12)));
        assertThat(LeastDistance.between(List.of(above), List.of(level)))
                .isEqualTo(new Segment(new Vec3(0, 0, 12), new Vec3(0, 0, 0)));
    }

    /** The least distance between points strewn evenly over both. */
    private static double sampled(Triangle a, Triangle b) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= 20; i++) {
            for (int j = 0; i + j <= 20; j++) {
                var p = mixed(a, i / 20.0, j / 20.0);
                for (int k = 0; k <= 20; k++) {
                    for (int l = 0; k + l <= 20; l++) {
                        least = Math.min(least, Products.length(p.minus(mixed(b, k / 20.0, l / 20.0))));
                    }
                }
            }
        }
        return least;
    }

    private static Vec3 mixed(Triangle t, double u, double v) {
        return t.a().plus(t.b().minus(t.a()).times(u)).plus(t.c().minus(t.a()).times(v));
    }

    private static double offPlane(Triangle t, Vec3 point) {
        return Math.abs(Products.dot(Products.unit(t.normal()), point.minus(t.a())));
    }

    private static Triangle triangle(SplittableRandom random) {
        return new Triangle(point(random), point(random), point(random));
    }

    private static Vec3 point(SplittableRandom random) {
        return new Vec3(random.nextDouble(100), random.nextDouble(100), random.nextDouble(100));
    }
}
