package org.standwright.viewer.scene.measure;

import static org.standwright.viewer.scene.measure.Products.dot;
import static org.standwright.viewer.scene.measure.Products.length;

import java.util.Comparator;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** Triangles that a maker would click on. */
final class Picked {
    private Picked() {}

    /** On the outermost plane of a solid in a direction. */
    static Face outermost(Solid solid, Axis way) {
        return FaceAt.of(solid, last(solid, triangle -> faces(solid, triangle, way), way.unit()));
    }

    /** On the largest plane that looks a way. */
    static Face largest(Solid solid, Axis way) {
        return FaceAt.of(
                solid,
                IntStream.range(0, solid.triangleCount())
                        .filter(triangle -> faces(solid, triangle, way))
                        .boxed()
                        .max(Comparator.comparingDouble(
                                triangle -> length(Triangle.of(solid, triangle).normal())))
                        .orElseThrow());
    }

    /** The wall of the hole whose axis is nearest to a point. */
    static RoundFace hole(Solid solid, Vec3 near) {
        return IntStream.range(0, solid.triangleCount())
                .mapToObj(triangle -> FaceAt.of(solid, triangle))
                .filter(RoundFace.class::isInstance)
                .map(RoundFace.class::cast)
                .min(Comparator.comparingDouble(hole ->
                        length(new Segment(hole.from(), hole.to()).middle().minus(near))))
                .orElseThrow();
    }

    private static boolean faces(Solid solid, int triangle, Axis way) {
        return dot(solid.normal(triangle), way.unit()) > 0.999;
    }

    private static int last(Solid solid, IntPredicate which, Vec3 way) {
        return IntStream.range(0, solid.triangleCount())
                .filter(which)
                .boxed()
                .max(Comparator.comparingDouble(
                        triangle -> dot(Triangle.of(solid, triangle).a(), way)))
                .orElseThrow();
    }
}
