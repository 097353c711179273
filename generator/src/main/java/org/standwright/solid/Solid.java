package org.standwright.solid;

import java.util.Locale;
import org.standwright.assembly.Placement;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * A closed solid as an indexed triangle mesh on the 1/1024 mm grid: every directed edge occurs once and its opposite
 * once; triangles run counter-clockwise seen from outside. Vertices may share a place where the solid touches itself.
 */
public final class Solid {
    /** Grid units in a millimetre. */
    public static final int PER_MM = 1024;

    /** A float holds whole numbers exactly up to here: 16 m. */
    private static final int LARGEST = 1 << 24;

    private final int[] vertices;
    private final int[] triangles;

    /**
     * @param vertices x, y, z of each vertex in units of 1/1024 mm
     * @param triangles three vertex indices each
     */
    Solid(int[] vertices, int[] triangles) {
        this.vertices = vertices.clone();
        this.triangles = triangles.clone();
    }

    /** The nearest point of the grid. */
    static int units(String what, double mm, String owner) {
        long units = Math.round(mm * PER_MM);
        if (Math.abs(units) > LARGEST) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "%s of '%s' is %.3f mm, but a solid must stay within 16384 mm.", what, owner, mm));
        }
        return (int) units;
    }

    public int vertexCount() {
        return vertices.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** Corner {@code 0..2} of a triangle as a vertex index. */
    public int corner(int triangle, int corner) {
        return triangles[3 * triangle + corner];
    }

    /** A vertex in mm. */
    public Vec3 vertex(int index) {
        return new Vec3(
                (double) vertices[3 * index] / PER_MM,
                (double) vertices[3 * index + 1] / PER_MM,
                (double) vertices[3 * index + 2] / PER_MM);
    }

    /** Unit normal of a triangle, out of the solid. */
    public Vec3 normal(int triangle) {
        var a = vertex(corner(triangle, 0));
        var normal = cross(
                vertex(corner(triangle, 1)).minus(a),
                vertex(corner(triangle, 2)).minus(a));
        return normal.times(1 / Math.sqrt(dot(normal, normal)));
    }

    /** mm³. */
    public double volume() {
        var centre = box().centre();
        double sum = 0;
        for (int t = 0; t < triangleCount(); t++) {
            sum += wedge(t, centre);
        }
        return sum;
    }

    /** The centre of gravity, mm. */
    public Vec3 centroid() {
        var centre = box().centre();
        var moment = Vec3.ZERO;
        double volume = 0;
        for (int t = 0; t < triangleCount(); t++) {
            double wedge = wedge(t, centre);
            volume += wedge;
            moment = moment.plus(arm(t, 0, centre)
                    .plus(arm(t, 1, centre))
                    .plus(arm(t, 2, centre))
                    .times(wedge / 4));
        }
        return centre.plus(moment.times(1 / volume));
    }

    /** The smallest box around it, mm. */
    public Box3 box() {
        var low = vertex(0);
        var high = low;
        for (int i = 1; i < vertexCount(); i++) {
            var v = vertex(i);
            low = new Vec3(Math.min(low.x(), v.x()), Math.min(low.y(), v.y()), Math.min(low.z(), v.z()));
            high = new Vec3(Math.max(high.x(), v.x()), Math.max(high.y(), v.y()), Math.max(high.z(), v.z()));
        }
        return new Box3(low, high);
    }

    /** The same solid turned and shifted; the shift goes to the nearest point of the grid, so nothing is rounded twice. */
    Solid placed(Placement placement, String label) {
        var origin = placement.origin();
        var shift =
                new int[] {units("x", origin.x(), label), units("y", origin.y(), label), units("z", origin.z(), label)};
        var turned = new int[vertices.length];
        var axes = new Vec3[] {
            placement.along().unit(),
            placement.across().unit(),
            placement.through().unit()
        };
        for (int i = 0; i < turned.length; i++) {
            int v = 3 * (i / 3);
            turned[i] = shift[i % 3];
            for (int axis = 0; axis < 3; axis++) {
                turned[i] += (int) component(axes[axis], i % 3) * vertices[v + axis];
            }
        }
        return new Solid(turned, triangles);
    }

    private static double component(Vec3 v, int i) {
        return i == 0 ? v.x() : i == 1 ? v.y() : v.z();
    }

    /** Volume between a triangle and {@code apex}. */
    private double wedge(int triangle, Vec3 apex) {
        return dot(arm(triangle, 0, apex), cross(arm(triangle, 1, apex), arm(triangle, 2, apex))) / 6;
    }

    private Vec3 arm(int triangle, int corner, Vec3 from) {
        return vertex(corner(triangle, corner)).minus(from);
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
