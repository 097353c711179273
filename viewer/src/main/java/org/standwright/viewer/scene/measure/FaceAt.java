package org.standwright.viewer.scene.measure;

import java.util.OptionalInt;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;

/** Finds the whole face around a triangle that was picked. */
public final class FaceAt {
    /** How far a point may lie off the face that it is to be on, mm. */
    private static final double TOUCHING = 0.05;

    private FaceAt() {}

    /** The triangle that a point of a solid's surface lies on; none where it lies elsewhere. */
    public static OptionalInt triangle(Solid solid, Vec3 point) {
        var nearest = OptionalInt.empty();
        double least = TOUCHING;
        for (int i = 0; i < solid.triangleCount(); i++) {
            var triangle = Triangle.of(solid, i);
            var foot = triangle.foot(point);
            double distance = Products.length(foot.minus(point));
            if (distance < least && triangle.covers(foot)) {
                nearest = OptionalInt.of(i);
                least = distance;
            }
        }
        return nearest;
    }

    /**
     * The wall of a hole or a post where the triangle belongs to one that goes all the way round, else the plane.
     *
     * @param triangle its number in the solid
     */
    public static Face of(Solid solid, int triangle) {
        var neighbours = new Neighbours(solid);
        var patch = FlatPatch.around(triangle, solid, neighbours);
        return new RoundWall(solid, neighbours)
                .around(patch)
                .map(Face.class::cast)
                .orElseGet(() -> new FlatFace(
                        patch.normal(),
                        patch.at(),
                        patch.numbers().stream()
                                .map(number -> Triangle.of(solid, number))
                                .toList()));
    }
}
