package org.standwright.solid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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
        for (var around : byEnds().values()) {
            if (around.size() == 2) {
                pair(around.get(0), around.get(1));
            } else {
                pairByWedge(around);
            }
        }
        mesh.halveCrowded();
    }

    /** Half-edges by the two points that they join, in the order in which the pairs come up first. */
    private Map<Long, List<Integer>> byEnds() {
        var groups = new LinkedHashMap<Long, List<Integer>>();
        for (int half = 0; half < mesh.count(); half++) {
            long low = Math.min(mesh.from(half), mesh.to(half));
            long high = Math.max(mesh.from(half), mesh.to(half));
            groups.computeIfAbsent(low << 32 | high, ends -> new ArrayList<>(2)).add(half);
        }
        return groups;
    }

    private void pair(int one, int other) {
        if (mesh.from(one) != mesh.to(other)) {
            throw new BrokenMeshException("two faces meet with opposite sides");
        }
        mesh.pair(one, other);
    }

    private void pairByWedge(List<Integer> around) {
        int first = around.get(0);
        var turn = new Turn(mesh, first);
        var angles = new HashMap<Integer, Double>();
        around.forEach(half -> angles.put(half, turn.angle(half)));
        var inTurn = new ArrayList<>(around);
        inTurn.sort(Comparator.comparing(angles::get));
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
