package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * Triangles whose sides know their partners. Half-edge 3t + i runs from corner i of triangle t to its next corner;
 * points are numbered as in the mesh, but one point may belong to several vertices.
 */
final class HalfEdges {
    private static final int NONE = -1;

    private int[] points;
    private int pointCount;
    private int[] starts;
    private int[] partners;
    private boolean[] crowded;
    private int count;

    HalfEdges(Mesh mesh) {
        points = mesh.vertices().clone();
        pointCount = mesh.vertexCount();
        starts = mesh.triangles().clone();
        count = starts.length;
        partners = new int[starts.length];
        Arrays.fill(partners, NONE);
        crowded = new boolean[starts.length];
    }

    int count() {
        return count;
    }

    int pointCount() {
        return pointCount;
    }

    int from(int half) {
        return starts[half];
    }

    int to(int half) {
        return starts[next(half)];
    }

    /** The point across from a half-edge. */
    int apex(int half) {
        return starts[next(next(half))];
    }

    double[] between(int a, int b) {
        return new double[] {
            points[3 * b] - points[3 * a], points[3 * b + 1] - points[3 * a + 1], points[3 * b + 2] - points[3 * a + 2]
        };
    }

    void pair(int one, int other) {
        if (partners[one] != NONE || partners[other] != NONE) {
            throw new BrokenMeshException("two faces claim one edge");
        }
        partners[one] = other;
        partners[other] = one;
    }

    /** Marks a half-edge whose two points are joined by other pairs too. */
    void markCrowded(int half) {
        crowded[half] = true;
    }

    /** Puts a new point half-way along every marked half-edge and cuts the triangles on both sides in two from there. */
    void halveCrowded() {
        for (int half = 0; half < count(); half++) {
            if (crowded[half]) {
                crowded[half] = false;
                halve(half);
            }
        }
    }

    private void halve(int half) {
        int partner = partners[half];
        int middle = addMiddle(from(half), to(half));
        int here = cut(half, middle);
        int there = cut(partner, middle);
        link(half, there);
        link(here, partner);
    }

    /** Cuts a triangle in two; returns the second half of the half-edge, of which {@code half} stays the first. */
    private int cut(int half, int middle) {
        int along = next(half);
        int second = addTriangle();
        starts[second] = middle;
        starts[second + 1] = starts[along];
        starts[second + 2] = apex(half);
        link(second + 1, partners[along]);
        crowded[second + 1] = crowded[along];
        crowded[along] = false;
        starts[along] = middle;
        link(along, second + 2);
        return second;
    }

    private int addTriangle() {
        if (count == starts.length) {
            starts = Arrays.copyOf(starts, 2 * count);
            partners = Arrays.copyOf(partners, 2 * count);
            crowded = Arrays.copyOf(crowded, 2 * count);
        }
        count += 3;
        return count - 3;
    }

    private void link(int one, int other) {
        partners[one] = other;
        partners[other] = one;
    }

    private int addMiddle(int a, int b) {
        int middle = pointCount++;
        if (points.length < 3 * pointCount) {
            points = Arrays.copyOf(points, 2 * points.length);
        }
        for (int i = 0; i < 3; i++) {
            points[3 * middle + i] = Math.floorDiv(points[3 * a + i] + points[3 * b + i], 2);
        }
        return middle;
    }

    /** The mesh in which all triangles of a fan, and no others, share a vertex. */
    Mesh withVertexPerFan() {
        var vertexAt = new int[count];
        Arrays.fill(vertexAt, NONE);
        var vertices = new int[3 * count];
        int numbered = 0;
        for (int half = 0; half < count; half++) {
            if (vertexAt[half] == NONE) {
                System.arraycopy(points, 3 * starts[half], vertices, 3 * numbered, 3);
                number(half, numbered++, vertexAt);
            }
        }
        return new Mesh(Arrays.copyOf(vertices, 3 * numbered), vertexAt);
    }

    private void number(int first, int vertex, int[] vertexAt) {
        int half = first;
        do {
            vertexAt[half] = vertex;
            // round the vertex: the half-edge that comes in before this one has its partner going out
            half = partners[next(next(half))];
        } while (vertexAt[half] == NONE);
    }

    private static int next(int half) {
        return half % 3 == 2 ? half - 2 : half + 1;
    }
}
