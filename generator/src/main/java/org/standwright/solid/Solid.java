package org.standwright.solid;

import java.util.Arrays;
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
     * @param triangles three vertex indices each; both arrays are handed over and change no more
     */
    Solid(int[] vertices, int[] triangles) {
        this.vertices = vertices;
        this.triangles = triangles;
    }

    /** The nearest point of the grid. */
    static int units(String what, double mm, String owner) {
        return exact(what, Math.round(mm * PER_MM), owner);
    }

    private static int exact(String what, long units, String owner) {
        if (Math.abs(units) > LARGEST) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s of '%s' is %.3f mm, but a solid must stay within 16384 mm.",
                    what,
                    owner,
                    (double) units / PER_MM));
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
        return point(vertices, 3 * index);
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
        return integrals().volume();
    }

    /** The centre of gravity, mm. */
    public Vec3 centroid() {
        return integrals().centroid();
    }

    /**
     * Its mass properties in its own frame.
     *
     * @param density of what it is made of, kg/m³
     */
    public MassProperties massProperties(double density) {
        return integrals().massProperties(density);
    }

    /** About the centre of the box, where coordinates are smallest. */
    private VolumeIntegrals integrals() {
        var centre = box().centre();
        var integrals = new VolumeIntegrals(centre);
        var x = new double[3];
        var y = new double[3];
        var z = new double[3];
        for (int i = 0; i < triangles.length; i += 3) {
            for (int corner = 0; corner < 3; corner++) {
                int v = 3 * triangles[i + corner];
                x[corner] = (double) vertices[v] / PER_MM - centre.x();
                y[corner] = (double) vertices[v + 1] / PER_MM - centre.y();
                z[corner] = (double) vertices[v + 2] / PER_MM - centre.z();
            }
            integrals.add(x, y, z);
        }
        return integrals;
    }

    /** The smallest box around it, mm. */
    public Box3 box() {
        var low = Arrays.copyOf(vertices, 3);
        var high = low.clone();
        for (int i = 3; i < vertices.length; i++) {
            low[i % 3] = Math.min(low[i % 3], vertices[i]);
            high[i % 3] = Math.max(high[i % 3], vertices[i]);
        }
        return new Box3(point(low, 0), point(high, 0));
    }

    /** The same solid turned and shifted; the shift goes to the nearest point of the grid, so nothing is rounded twice. */
    Solid placed(Placement placement, String label) {
        var shift = units(placement.origin(), label);
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
            exact("a coordinate", turned[i], label);
        }
        return new Solid(turned, triangles);
    }

    /** The point of the grid nearest to a shift, mm. */
    static Vec3 onGrid(Vec3 shift, String owner) {
        return point(units(shift, owner), 0);
    }

    private static int[] units(Vec3 mm, String owner) {
        return new int[] {units("x", mm.x(), owner), units("y", mm.y(), owner), units("z", mm.z(), owner)};
    }

    private static Vec3 point(int[] units, int at) {
        return new Vec3((double) units[at] / PER_MM, (double) units[at + 1] / PER_MM, (double) units[at + 2] / PER_MM);
    }

    private static double component(Vec3 v, int i) {
        return i == 0 ? v.x() : i == 1 ? v.y() : v.z();
    }

    private static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(a.y() * b.z() - a.z() * b.y(), a.z() * b.x() - a.x() * b.z(), a.x() * b.y() - a.y() * b.x());
    }
}
