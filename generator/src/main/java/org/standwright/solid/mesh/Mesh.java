package org.standwright.solid.mesh;

/**
 * Indexed triangles.
 *
 * @param vertices x, y, z of each vertex, 1/1024 mm
 * @param triangles three vertex numbers each, counter-clockwise from outside
 */
public record Mesh(int[] vertices, int[] triangles) {
    public int vertexCount() {
        return vertices.length / 3;
    }

    public int triangleCount() {
        return triangles.length / 3;
    }

    /** Six times the volume enclosed, reckoned from the first vertex. */
    public double sixfoldVolume() {
        double sum = 0;
        for (int t = 0; t < triangles.length; t += 3) {
            var a = fromFirst(triangles[t]);
            var b = fromFirst(triangles[t + 1]);
            var c = fromFirst(triangles[t + 2]);
            sum += a[0] * (b[1] * c[2] - b[2] * c[1])
                    + a[1] * (b[2] * c[0] - b[0] * c[2])
                    + a[2] * (b[0] * c[1] - b[1] * c[0]);
        }
        return sum;
    }

    private double[] fromFirst(int vertex) {
        return new double[] {
            vertices[3 * vertex] - vertices[0],
            vertices[3 * vertex + 1] - vertices[1],
            vertices[3 * vertex + 2] - vertices[2]
        };
    }
}
