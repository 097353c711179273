package org.standwright.viewer.scene.surface;

import java.util.Arrays;
import org.standwright.geom.Vec3;

/** Triangles that share their corners, counter-clockwise seen from outside. It need not be closed. Equal ones have the same points. */
public final class Surface {
    private final double[] points;
    private final int[] triangles;

    /** Takes over both arrays, which change no more. */
    Surface(double[] points, int[] triangles) {
        this.points = points;
        this.triangles = triangles;
    }

    public int pointCount() {
        return points.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** A point in mm. */
    public Vec3 point(int index) {
        return new Vec3(points[3 * index], points[3 * index + 1], points[3 * index + 2]);
    }

    /** Corner {@code 0..2} of a triangle as the index of a point. */
    public int corner(int triangle, int corner) {
        return triangles[3 * triangle + corner];
    }

    /** The way that a triangle looks, length 1; 0 for one without area. */
    public Vec3 normal(int triangle) {
        var a = point(corner(triangle, 0));
        var b = point(corner(triangle, 1)).minus(a);
        var c = point(corner(triangle, 2)).minus(a);
        var normal =
                new Vec3(b.y() * c.z() - b.z() * c.y(), b.z() * c.x() - b.x() * c.z(), b.x() * c.y() - b.y() * c.x());
        double length = Math.sqrt(normal.x() * normal.x() + normal.y() * normal.y() + normal.z() * normal.z());
        return length > 0 ? normal.times(1 / length) : normal;
    }

    public boolean isEmpty() {
        return triangles.length == 0;
    }

    /**
     * What it adds to the volume of a closed surface that it is a piece of, mm³: the volume between its triangles and the
     * origin, below 0 where they are seen from the origin.
     */
    public double volume() {
        double sixfold = 0;
        for (int i = 0; i < triangles.length; i += 3) {
            sixfold += triple(3 * triangles[i], 3 * triangles[i + 1], 3 * triangles[i + 2]);
        }
        return sixfold / 6;
    }

    private double triple(int a, int b, int c) {
        return points[a] * (points[b + 1] * points[c + 2] - points[b + 2] * points[c + 1])
                + points[a + 1] * (points[b + 2] * points[c] - points[b] * points[c + 2])
                + points[a + 2] * (points[b] * points[c + 1] - points[b + 1] * points[c]);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Surface surface
                && Arrays.equals(points, surface.points)
                && Arrays.equals(triangles, surface.triangles);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(points) + Arrays.hashCode(triangles);
    }

    /** x, y and z of every point, mm. */
    public float[] floats() {
        var floats = new float[points.length];
        for (int i = 0; i < floats.length; i++) {
            floats[i] = (float) points[i];
        }
        return floats;
    }
}
