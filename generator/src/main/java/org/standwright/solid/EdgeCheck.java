package org.standwright.solid;

import java.util.HashMap;
import java.util.Map;

/** Says whether a mesh closes; looks at nothing but vertex numbers and coordinates. */
final class EdgeCheck {
    private final Mesh mesh;
    /** The corner at which each directed edge starts. */
    private final Map<Long, Integer> starts = new HashMap<>();

    private EdgeCheck(Mesh mesh) {
        this.mesh = mesh;
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
        for (int corner = 0; corner < mesh.triangles().length; corner++) {
            if (starts.put(edge(vertex(corner), vertex(next(corner))), corner) != null) {
                throw new BrokenMeshException("an edge has more than two faces");
            }
            if (corner % 3 == 0 && isFlat(corner)) {
                throw new BrokenMeshException("a triangle has no area");
            }
        }
        for (int corner = 0; corner < mesh.triangles().length; corner++) {
            if (!starts.containsKey(edge(vertex(next(corner)), vertex(corner)))) {
                throw new BrokenMeshException("an edge has one face only");
            }
        }
    }

    private void fans() {
        var seen = new boolean[mesh.vertexCount()];
        var visited = new boolean[mesh.triangles().length];
        for (int first = 0; first < visited.length; first++) {
            if (!visited[first]) {
                if (seen[vertex(first)]) {
                    throw new BrokenMeshException("two fans of faces share a vertex");
                }
                seen[vertex(first)] = true;
                for (int corner = first; !visited[corner]; corner = aside(corner)) {
                    visited[corner] = true;
                }
            }
        }
    }

    /** The corner of the next triangle round the same vertex. */
    private int aside(int corner) {
        int before = next(next(corner));
        return starts.get(edge(vertex(corner), vertex(before)));
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

    private static long edge(int from, int to) {
        return (long) from << 32 | to;
    }
}
