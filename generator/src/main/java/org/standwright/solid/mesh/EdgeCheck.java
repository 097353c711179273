package org.standwright.solid.mesh;

import java.util.Arrays;

/** Says whether a mesh closes; looks at nothing but vertex numbers and coordinates. */
final class EdgeCheck {
    private final Mesh mesh;
    /** Where the corners of each vertex begin in {@link #corners}. */
    private final int[] firsts;
    /** All corners, sorted by vertex. */
    private final int[] corners;

    private EdgeCheck(Mesh mesh) {
        this.mesh = mesh;
        firsts = new int[mesh.vertexCount() + 1];
        Arrays.stream(mesh.triangles()).forEach(vertex -> firsts[vertex + 1]++);
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            firsts[vertex + 1] += firsts[vertex];
        }
        corners = new int[mesh.triangles().length];
        var next = firsts.clone();
        for (int corner = 0; corner < corners.length; corner++) {
            corners[next[vertex(corner)]++] = corner;
        }
    }

    /**
     * Every triangle has an area, every directed edge occurs once and so does its opposite, the triangles round each
     * vertex make one fan, and the whole encloses a volume.
     */
    static void check(Mesh mesh) {
        var check = new EdgeCheck(mesh);
        check.edges();
        check.fans();
        if (!(mesh.sixfoldVolume() > 0)) {
            throw new BrokenMeshException("its solid is turned inside out");
        }
    }

    private void edges() {
        for (int corner = 0; corner < corners.length; corner++) {
            if (corner % 3 == 0 && isFlat(corner)) {
                throw new BrokenMeshException("a triangle has no area");
            }
            leading(vertex(corner), vertex(next(corner)));
            leading(vertex(next(corner)), vertex(corner));
        }
    }

    /** The corner that the only edge from {@code from} to {@code to} starts at. */
    private int leading(int from, int to) {
        int found = -1;
        for (int i = firsts[from]; i < firsts[from + 1]; i++) {
            if (vertex(next(corners[i])) == to) {
                if (found >= 0) {
                    throw new BrokenMeshException("an edge has more than two faces");
                }
                found = corners[i];
            }
        }
        if (found < 0) {
            throw new BrokenMeshException("an edge has one face only");
        }
        return found;
    }

    private void fans() {
        for (int vertex = 0; vertex < mesh.vertexCount(); vertex++) {
            int around = firsts[vertex + 1] - firsts[vertex];
            int corner = corners[firsts[vertex]];
            for (int i = 1; i < around; i++) {
                corner = aside(corner);
                if (corner == corners[firsts[vertex]]) {
                    throw new BrokenMeshException("two fans of faces share a vertex");
                }
            }
        }
    }

    /** The corner of the next triangle round the same vertex. */
    private int aside(int corner) {
        return leading(vertex(corner), vertex(next(next(corner))));
    }

    private boolean isFlat(int corner) {
        long ux = x(corner + 1) - x(corner);
        long uy = y(corner + 1) - y(corner);
        long uz = z(corner + 1) - z(corner);
        long vx = x(corner + 2) - x(corner);
        long vy = y(corner + 2) - y(corner);
        long vz = z(corner + 2) - z(corner);
        return uy * vz == uz * vy && uz * vx == ux * vz && ux * vy == uy * vx;
    }

    private long x(int corner) {
        return mesh.vertices()[3 * vertex(corner)];
    }

    private long y(int corner) {
        return mesh.vertices()[3 * vertex(corner) + 1];
    }

    private long z(int corner) {
        return mesh.vertices()[3 * vertex(corner) + 2];
    }

    private int vertex(int corner) {
        return mesh.triangles()[corner];
    }

    private static int next(int corner) {
        return corner % 3 == 2 ? corner - 2 : corner + 1;
    }
}
