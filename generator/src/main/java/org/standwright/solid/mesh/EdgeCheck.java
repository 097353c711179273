package org.standwright.solid.mesh;

import java.util.Arrays;

/** Says whether a mesh closes; looks at nothing but vertex numbers and coordinates. */
final class EdgeCheck {
    private static final int NONE = -1;

    private final Mesh mesh;
    /** Three vertices to each triangle; the edge of a corner runs from there to the next corner. */
    private final int[] triangles;
    /** By corner: the vertex at the end of its edge. */
    private final int[] ends;
    /** By vertex: how many corners it has, and one of them. */
    private final int[] counts;

    private final int[] corners;
    /** By vertex: a corner whose edge has no partner yet, listed at the end of the edge that has fewer corners. */
    private final int[] lonely;
    /** By corner: the next one in such a list. */
    private final int[] others;
    /** By corner: the one whose edge runs the opposite way. */
    private final int[] partners;

    private EdgeCheck(Mesh mesh) {
        this.mesh = mesh;
        triangles = mesh.triangles();
        ends = new int[triangles.length];
        counts = new int[mesh.vertexCount()];
        corners = new int[mesh.vertexCount()];
        lonely = new int[mesh.vertexCount()];
        Arrays.fill(lonely, NONE);
        others = new int[triangles.length];
        partners = new int[triangles.length];
        Arrays.fill(partners, NONE);
    }

    /**
     * Whether every directed edge occurs once and so does its opposite, and the triangles round each vertex make one
     * fan; false if edges pair up, but the solid touches itself in one or in a vertex. Throws
     * {@link BrokenMeshException} if an edge is open, a triangle has no area, or the whole is inside out.
     */
    static boolean isParted(Mesh mesh) {
        var check = new EdgeCheck(mesh);
        check.areas();
        check.count();
        check.pair();
        if (!(mesh.sixfoldVolume() > 0)) {
            throw new BrokenMeshException("its solid is turned inside out");
        }
        return check.areFans();
    }

    private void areas() {
        for (int corner = 0; corner < triangles.length; corner += 3) {
            if (isFlat(3 * triangles[corner], 3 * triangles[corner + 1], 3 * triangles[corner + 2])) {
                throw new BrokenMeshException("a triangle has no area");
            }
        }
    }

    /** Of vertices told by where their coordinates begin. */
    private boolean isFlat(int a, int b, int c) {
        var xyz = mesh.vertices();
        long ux = xyz[b] - xyz[a];
        long uy = xyz[b + 1] - xyz[a + 1];
        long uz = xyz[b + 2] - xyz[a + 2];
        long vx = xyz[c] - xyz[a];
        long vy = xyz[c + 1] - xyz[a + 1];
        long vz = xyz[c + 2] - xyz[a + 2];
        return uy * vz == uz * vy && uz * vx == ux * vz && ux * vy == uy * vx;
    }

    private void count() {
        for (int corner = 0; corner < triangles.length; corner++) {
            counts[triangles[corner]]++;
            corners[triangles[corner]] = corner;
        }
    }

    private void pair() {
        for (int corner = 0; corner < triangles.length; corner += 3) {
            int a = triangles[corner];
            int b = triangles[corner + 1];
            int c = triangles[corner + 2];
            pair(corner, a, b);
            pair(corner + 1, b, c);
            pair(corner + 2, c, a);
        }
        for (int partner : partners) {
            if (partner == NONE) {
                throw new BrokenMeshException("an edge has an open side");
            }
        }
    }

    /** Gives the edge of a corner, from {@code a} to {@code b}, a lonely opposite as partner if there is one. */
    private void pair(int corner, int a, int b) {
        ends[corner] = b;
        int home = counts[a] < counts[b] || counts[a] == counts[b] && a < b ? a : b;
        int last = NONE;
        for (int other = lonely[home]; other != NONE; other = others[other]) {
            if (triangles[other] == b && ends[other] == a) {
                unlink(other, last, home);
                partners[corner] = other;
                partners[other] = corner;
                return;
            }
            last = other;
        }
        others[corner] = lonely[home];
        lonely[home] = corner;
    }

    private void unlink(int corner, int last, int home) {
        if (last == NONE) {
            lonely[home] = others[corner];
        } else {
            others[last] = others[corner];
        }
    }

    private boolean areFans() {
        var seenFrom = new int[counts.length];
        Arrays.fill(seenFrom, NONE);
        for (int vertex = 0; vertex < counts.length; vertex++) {
            if (counts[vertex] > 0 && !isFan(vertex, seenFrom)) {
                return false;
            }
        }
        return true;
    }

    /** Whether stepping from triangle to triangle round a vertex leads to all of them, and never twice to one edge. */
    private boolean isFan(int vertex, int[] seenFrom) {
        int corner = corners[vertex];
        int count = 0;
        do {
            int end = ends[corner];
            if (seenFrom[end] == vertex) {
                return false;
            }
            seenFrom[end] = vertex;
            corner = partners[previous(corner)];
            count++;
        } while (corner != corners[vertex]);
        return count == counts[vertex];
    }

    private static int previous(int corner) {
        return corner % 3 == 0 ? corner + 2 : corner - 1;
    }
}
