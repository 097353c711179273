package org.standwright.viewer.scene.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.standwright.geom.Box3;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

class SurfaceBuilderTest {
    @Test
    void aBoxIsClosedAndLooksOutwards() {
        var box = new SurfaceBuilder()
                .box(new Box3(new Vec3(1, 2, 3), new Vec3(11, 22, 33)))
                .build();

        assertThat(box.volume()).isCloseTo(10 * 20 * 30, within(1e-9));
        assertThat(new ClosedCheck().add(box).open()).isZero();
    }

    @Test
    void aRodIsClosedWhicheverWayItRuns() {
        for (var to : List.of(new Vec3(5, 0, 0), new Vec3(0, -5, 0), new Vec3(0, 0, 5), new Vec3(-3, 4, 0))) {
            var rod = new SurfaceBuilder().rod(Vec3.ZERO, to, 2).build();

            assertThat(rod.volume()).as("to %s", to).isCloseTo(5 * 4, within(1e-9));
            assertThat(new ClosedCheck().add(rod).open()).isZero();
        }
    }

    @Test
    void aSlabHasEdgesAroundItsHoles() {
        var plate = polygon(0, 0, 100, 50);
        var region = FlatRegion.of(plate.difference(polygon(10, 10, 30, 40)));

        var slab = new SurfaceBuilder()
                .slab(region.get(0), at -> new Vec3(at.x(), 1, at.y()), at -> new Vec3(at.x(), 4, at.y()))
                .build();

        assertThat(region).hasSize(1);
        assertThat(slab.volume()).isCloseTo((100 * 50 - 20 * 30) * 3, within(1e-9));
        assertThat(new ClosedCheck().add(slab).open()).isZero();
    }

    @Test
    void everyCornerOfARegionIsUsedAlsoThoseOnStraightSides() {
        var corners = List.of(
                new Vec2(0, 0), new Vec2(5, 0), new Vec2(10, 0), new Vec2(10, 10), new Vec2(5, 10), new Vec2(0, 10));

        var triangles = new FlatRegion(corners, List.of(0, 1, 2, 3, 4, 5), List.of()).triangles();

        assertThat(triangles.stream().flatMapToInt(Arrays::stream).distinct())
                .containsExactlyInAnyOrder(0, 1, 2, 3, 4, 5);
        assertThat(area(corners, triangles)).isCloseTo(100, within(1e-9));
    }

    @Test
    void aRimThatMeetsItselfIsFilledAllTheSame() {
        // two squares that share one corner, walked round as one rim
        var corners = List.of(
                new Vec2(0, 0),
                new Vec2(10, 0),
                new Vec2(10, 10),
                new Vec2(20, 10),
                new Vec2(20, 20),
                new Vec2(10, 20),
                new Vec2(10, 10),
                new Vec2(0, 10));

        var triangles = new FlatRegion(corners, List.of(0, 1, 2, 3, 4, 5, 6, 7), List.of()).triangles();

        assertThat(area(corners, triangles)).isCloseTo(200, within(1e-9));
    }

    private static double area(List<Vec2> corners, List<int[]> triangles) {
        return triangles.stream()
                .mapToDouble(triangle -> {
                    var a = corners.get(triangle[0]);
                    return corners.get(triangle[1])
                                    .minus(a)
                                    .cross(corners.get(triangle[2]).minus(a))
                            / 2;
                })
                .sum();
    }

    private static Geometry polygon(double x0, double y0, double x1, double y1) {
        return FlatRegion.polygon(Outline.of(new Rect(x0, y0, x1, y1)));
    }
}
