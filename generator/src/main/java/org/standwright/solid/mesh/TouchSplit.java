package org.standwright.solid.mesh;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Parts the places where a solid merely touches itself, along an edge or in a corner. The triangles round such an edge
 * are paired by the wedge of material between them, and each pair gets a corner of its own half-way along; then every
 * fan of triangles round a corner gets a vertex of its own. No triangle moves.
 */
final class TouchSplit {
    private final HalfEdges mesh;

    private TouchSplit(Mesh mesh) {
        this.mesh = new HalfEdges(mesh);
    }

    static Mesh split(Mesh mesh) {
        var split = new TouchSplit(mesh);
        split.pairAll();
        return split.mesh.withVertexPerFan();
    }

    private void pairAll() {
        var byEnds = new HalfEdgeOrder(mesh);
        for (int start = 0; start < byEnds.count(); ) {
            var around = byEnds.sameEnds(start);
            if (around.length == 2) {
                pair(around[0], around[1]);
            } else {
                pairByWedge(around);
            }
            start += around.length;
        }
        mesh.halveCrowded();
    }

    private void pair(int one, int other) {
        if (mesh.from(one) != mesh.to(other)) {
            throw new BrokenMeshException("two faces meet with opposite sides");
        }
        mesh.pair(one, other);
    }

    private void pairByWedge(int[] around) {
        int first = around[0];
        var turn = new Turn(mesh, first);
        var inTurn = IntStream.of(around)
                .boxed()
                .sorted(Comparator.comparingDouble(turn::angle))
                .toList();
        int pairs = 0;
        for (int i = 0; i < inTurn.size(); i++) {
            int half = inTurn.get(i);
            if (mesh.from(half) == mesh.from(first)) {
                // outside lies ahead of such a triangle, material behind it
                pair(half, inTurn.get((i + inTurn.size() - 1) % inTurn.size()));
                mesh.markCrowded(half);
                pairs++;
            }
        }
        if (2 * pairs != inTurn.size()) {
            throw new BrokenMeshException("a face has an open edge");
        }
    }
}
