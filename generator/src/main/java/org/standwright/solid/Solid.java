package org.standwright.solid;

import org.standwright.geom.Vec3;

/**
 * A closed solid as an indexed triangle mesh on the 1/1024 mm grid: every directed edge occurs once and its opposite
 * once; triangles run counter-clockwise seen from outside.
 */
public final class Solid {
    /** Grid units in a millimetre. */
    public static final int PER_MM = 1024;

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

    /** A vertex in mm, in the part's frame. */
    public Vec3 vertex(int index) {
        return new Vec3(
                (double) vertices[3 * index] / PER_MM,
                (double) vertices[3 * index + 1] / PER_MM,
                (double) vertices[3 * index + 2] / PER_MM);
    }
}
