package org.standwright.viewer.scene;

import javafx.scene.shape.TriangleMesh;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.surface.Surface;

/** The creases of a solid, for the screen. */
final class EdgeMesh {
    private static final int CORNERS = 4;

    private EdgeMesh() {}

    /** Each edge as a triangle without area, which drawn as lines is the edge, one pixel wide from near and far. */
    static TriangleMesh lines(Solid solid, Creases creases) {
        return lines(MeshConverter.points(solid), creases);
    }

    static TriangleMesh lines(Surface surface, Creases creases) {
        return lines(surface.floats(), creases);
    }

    private static TriangleMesh lines(float[] points, Creases creases) {
        var faces = new int[6 * creases.count()];
        for (int edge = 0; edge < creases.count(); edge++) {
            faces[6 * edge] = creases.ends()[2 * edge];
            faces[6 * edge + 2] = creases.ends()[2 * edge + 1];
            faces[6 * edge + 4] = creases.ends()[2 * edge + 1];
        }
        return MeshConverter.mesh(points, faces);
    }

    /**
     * Each edge as a square bar.
     *
     * @param width of the bar, mm
     */
    static TriangleMesh bars(Solid solid, Creases creases, double width) {
        var points = new float[2 * 3 * CORNERS * creases.count()];
        var faces = new int[2 * 6 * CORNERS * creases.count()];
        for (int edge = 0; edge < creases.count(); edge++) {
            var from = solid.vertex(creases.ends()[2 * edge]);
            var to = solid.vertex(creases.ends()[2 * edge + 1]);
            putCorners(points, 2 * 3 * CORNERS * edge, from, to, width / 2);
            putSides(faces, 2 * 6 * CORNERS * edge, 2 * CORNERS * edge);
        }
        return MeshConverter.mesh(points, faces);
    }

    private static void putCorners(float[] points, int at, Vec3 from, Vec3 to, double half) {
        var along = unit(to.minus(from));
        var aside = unit(cross(along, Math.abs(along.z()) < 0.9 ? new Vec3(0, 0, 1) : new Vec3(1, 0, 0)));
        var across = cross(along, aside);
        for (int corner = 0; corner < CORNERS; corner++) {
            var out = aside.times(corner == 0 || corner == 3 ? half : -half)
                    .plus(across.times(corner < 2 ? half : -half));
            put(points, at + 3 * corner, from.plus(out).minus(along.times(half)));
            put(points, at + 3 * (corner + CORNERS), to.plus(out).plus(along.times(half)));
        }
    }

    private static void putSides(int[] faces, int at, int first) {
        for (int corner = 0; corner < CORNERS; corner++) {
            int next = (corner + 1) % CORNERS;
            int[] square = {corner, next, next + CORNERS, corner, next + CORNERS, corner + CORNERS};
            for (int i = 0; i < square.length; i++) {
                faces[at + 12 * corner + 2 * i] = first + square[i];
            }
        }
    }

    private static void put(float[] points, int at, Vec3 point) {
        points[at] = (float) point.x();
        points[at + 1] = (float) point.y();
        points[at + 2] = (float) point.z();
    }

    private static Vec3 unit(Vec3 v) {
        return v.times(1 / Math.sqrt(Orbit.dot(v, v)));
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
