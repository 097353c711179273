package org.standwright.solid.mesh;

/** Indexed triangles; its arrays are not copied, so whoever makes one or reads one must not change them. */
public final class Mesh {
    private final int[] vertices;
    private final int[] triangles;
    private final double sixfoldVolume;

    /**
     * @param vertices x, y, z of each vertex, 1/1024 mm
     * @param triangles three vertex numbers each, counter-clockwise from outside
     */
    public Mesh(int[] vertices, int[] triangles) {
        this.vertices = vertices;
        this.triangles = triangles;
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            sum += sixfoldWedge(3 * triangles[t], 3 * triangles[t + 1], 3 * triangles[t + 2]);
        }
        sixfoldVolume = sum;
    }

    public int[] vertices() {
        return vertices;
    }

    public int[] triangles() {
        return triangles;
    }

    public int vertexCount() {
        return vertices.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** Six times the volume enclosed, reckoned from the first vertex. */
    public double sixfoldVolume() {
        return sixfoldVolume;
    }

    /** Between the first vertex and a triangle of vertices, told by where their coordinates begin. */
    private double sixfoldWedge(int a, int b, int c) {
        double ax = vertices[a] - vertices[0];
        double ay = vertices[a + 1] - vertices[1];
        double az = vertices[a + 2] - vertices[2];
        double bx = vertices[b] - vertices[0];
        double by = vertices[b + 1] - vertices[1];
        double bz = vertices[b + 2] - vertices[2];
        double cx = vertices[c] - vertices[0];
        double cy = vertices[c + 1] - vertices[1];
        double cz = vertices[c + 2] - vertices[2];
        return ax * (by * cz - bz * cy) + ay * (bz * cx - bx * cz) + az * (bx * cy - by * cx);
    }
}
