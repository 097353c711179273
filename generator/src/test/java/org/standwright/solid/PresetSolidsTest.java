package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import eu.mihosoft.jcsg.CSG;
import eu.mihosoft.jcsg.Polygon;
import eu.mihosoft.vvecmath.Vector3d;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.assembly.Placement;
import org.standwright.design.Designs;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/** The solids of every complete preset: right by themselves and clear of each other. */
class PresetSolidsTest {
    /** Rounding to the mesh grid may press two faces this far into each other, mm. */
    private static final double TOLERANCE = 0.002;

    static Stream<StandDesign> stands() {
        return Presets.stands();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void haveTheVolumeThatTheirFeaturesLeave(StandDesign design) {
        ClosedSolids.check(StandBuilder.build(design).assembly());
    }

    @ParameterizedTest
    @MethodSource("stands")
    void keepEveryVertexWithinAGridStepOfTheModel(StandDesign design) {
        for (var part : distinct(design)) {
            var surfaces = ModelSurfaces.of(part);
            var solid = Solids.of(part);
            for (int i = 0; i < solid.vertexCount(); i++) {
                assertThat(surfaces.distance(solid.vertex(i)))
                        .as("%s at %s", part.name(), solid.vertex(i))
                        .isLessThanOrEqualTo(1.0 / 1024);
            }
        }
    }

    /** Judged by the kernel's intersection, which the builder does not use. */
    @ParameterizedTest
    @MethodSource("stands")
    void doNotReachIntoEachOther(StandDesign design) {
        var solids = AssemblySolids.of(StandBuilder.build(design).assembly()).solids().stream()
                .map(PlacedSolid::inPlace)
                .toList();
        for (int i = 0; i < solids.size(); i++) {
            for (int j = i + 1; j < solids.size(); j++) {
                var a = solids.get(i);
                var b = solids.get(j);
                if (a.box().overlap(b.box()) > TOLERANCE) {
                    assertThat(common(a, b)).isLessThan(TOLERANCE * contact(a.box(), b.box()));
                }
            }
        }
    }

    private static List<Part> distinct(StandDesign design) {
        return StandBuilder.build(design).assembly().parts().stream()
                .map(placed -> placed.part())
                .distinct()
                .toList();
    }

    @Test
    void wouldBeFoundOutIfTheyDid() {
        var board = Part.blank("board", Designs.BOARD_18.material(), 200, 100);
        var one = Solids.of(board);
        var other = one.placed(new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, 17.75)), "board");

        assertThat(common(one, other)).isCloseTo(200 * 100 * 0.25, within(1e-3));
        assertThat(common(one, other)).isGreaterThan(TOLERANCE * contact(one.box(), other.box()));
    }

    /** Volume that both solids claim, mm³. */
    private static double common(Solid a, Solid b) {
        return volume(kernel(a).intersect(kernel(b)));
    }

    private static CSG kernel(Solid solid) {
        return CSG.fromPolygons(IntStream.range(0, solid.triangleCount())
                .mapToObj(t -> Polygon.fromPoints(IntStream.range(0, 3)
                        .mapToObj(corner -> point(solid.vertex(solid.corner(t, corner))))
                        .toList()))
                .toList());
    }

    private static Vector3d point(Vec3 v) {
        return Vector3d.xyz(v.x(), v.y(), v.z());
    }

    private static double volume(CSG csg) {
        double sum = 0;
        for (var polygon : csg.getPolygons()) {
            var first = polygon.vertices.get(0).pos;
            for (int i = 1; i + 1 < polygon.vertices.size(); i++) {
                var cross = polygon.vertices.get(i).pos.crossed(polygon.vertices.get(i + 1).pos);
                sum += first.dot(cross) / 6;
            }
        }
        return Math.abs(sum);
    }

    /** Surface of the box in which two solids may meet: their faces touch on no more than that. */
    private static double contact(Box3 a, Box3 b) {
        double x = Math.min(a.max().x(), b.max().x())
                - Math.max(a.min().x(), b.min().x());
        double y = Math.min(a.max().y(), b.max().y())
                - Math.max(a.min().y(), b.min().y());
        double z = Math.min(a.max().z(), b.max().z())
                - Math.max(a.min().z(), b.min().z());
        return 2 * (x * y + y * z + z * x);
    }
}
