package org.standwright.solid.mesh;

import java.util.Arrays;

/** Says whether a mesh closes; looks at nothing but vertex numbers and coordinates. */
final class EdgeCheck {
    private static final int NONE = -1;

    private final int[] vertices;
    private final int[] triangles;
    /** Where the corners of each vertex begin in {@link #corners}. */
    private final int[] firsts;
    /** All corners, sorted by vertex. */
    private final int[] corners;
    /** By corner: where the opposite of the edge from there to the next corner starts. */
    private final int[] partners;

    private EdgeCheck(Mesh mesh) {
        vertices = mesh.vertices();
        triangles = mesh.triangles();
        firsts = new int[mesh.vertexCount() + 1];
        corners = new int[triangles.length];
        partners = new int[triangles.length];
        Arrays.fill(partners, NONE);
        sortCorners();
    }

    private void sortCorners() {
        for (int vertex : triangles) {
            firsts[vertex + 1]++;
        }
        for (int vertex = 1; vertex < firsts.length; vertex++) {
            firsts[vertex] += firsts[vertex - 1];
        }
        var next = firsts.clone();
        for (int corner = 0; corner < triangles.length; corner++) {
            corners[next[triangles[corner]]++] = corner;
        }
    }

    /**
     * Whether every directed edge occurs once and so does its opposite, and the triangles round each vertex make one
     * fan; false if they would but for edges or vertices in which the solid touches itself. Throws
     * {@link BrokenMeshException} if an edge is open, a triangle has no area, or the whole is inside out.
     */
    static boolean isParted(Mesh mesh) {
        var check = new EdgeCheck(mesh);
        check.areas();
        boolean parted = check.edges() && check.fans();
        if (!(mesh.sixfoldVolume() > 0)) {
            throw new BrokenMeshException("its solid is turned inside out");
        }
        return parted;
    }

    private boolean edges() {
        boolean once = true;
        for (int corner = 0; corner < triangles.length; corner++) {
            if (partners[corner] == NONE) {
                once &= findPartner(triangles[corner], triangles[next(corner)]);
            }
        }
        return once;
    }

    /** Whether one edge runs from {@code a} to {@code b} and one back; looks where fewer corners are. */
    private boolean findPartner(int a, int b) {
        return cornersAt(a) <= cornersAt(b) ? findPartnerAt(a, b) : findPartnerAt(b, a);
    }

    private boolean findPartnerAt(int here, int there) {
        int out = NONE;
        int back = NONE;
        int excess = 0;
        int count = 0;
        for (int i = firsts[here]; i < firsts[here + 1]; i++) {
            int corner = corners[i];
            if (triangles[next(corner)] == there) {
                out = corner;
                excess++;
                count++;
            }
            if (triangles[previous(corner)] == there) {
                back = previous(corner);
                excess--;
                count++;
            }
        }
        if (excess != 0) {
            throw new BrokenMeshException("an edge has an open side");
        }
        partners[out] = back;
        partners[back] = out;
        return count == 2;
    }

    private boolean fans() {
        for (int vertex = 0; vertex < firsts.length - 1; vertex++) {
            if (cornersAt(vertex) != fanAt(vertex)) {
                return false;
            }
        }
        return true;
    }

    /** How many triangles follow each other round a vertex from the first to the first again. */
    private int fanAt(int vertex) {
        int start = corners[firsts[vertex]];
        int corner = start;
        int count = 0;
        do {
            corner = partners[previous(corner)];
            count++;
        } while (corner != start);
        return count;
    }

    private int cornersAt(int vertex) {
        return firsts[vertex + 1] - firsts[vertex];
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
        long ux = vertices[b] - vertices[a];
        long uy = vertices[b + 1] - vertices[a + 1];
        long uz = vertices[b + 2] - vertices[a + 2];
        long vx = vertices[c] - vertices[a];
        long vy = vertices[c + 1] - vertices[a + 1];
        long vz = vertices[c + 2] - vertices[a + 2];
        return uy * vz == uz * vy && uz * vx == ux * vz && ux * vy == uy * vx;
    }

    private static int next(int corner) {
        return corner % 3 == 2 ? corner - 2 : corner + 1;
    }

    private static int previous(int corner) {
        return corner % 3 == 0 ? corner + 2 : corner - 1;
    }
}
