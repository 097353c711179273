package org.standwright.solid.mesh;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Parts the places where a solid merely touches itself, along an edge or in a corner. The triangles round such an edge
 * are paired by the wedge of material between them, and each pair gets a corner of its own half-way along; then every
 * fan of triangles round a corner gets a vertex of its own. No triangle moves.
 */
final class TouchSplit {
    private static final int POINT_BITS = 21;
    private static final int HALF_BITS = 22;

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
        var keys = sortedByEnds();
        for (int start = 0; start < keys.length; ) {
            int end = start + 1;
            while (end < keys.length && keys[end] >> HALF_BITS == keys[start] >> HALF_BITS) {
                end++;
            }
            if (end - start == 2) {
                pair(half(keys[start]), half(keys[start + 1]));
            } else {
                pairByWedge(Arrays.stream(keys, start, end)
                        .mapToInt(TouchSplit::half)
                        .toArray());
            }
            start = end;
        }
        mesh.halveCrowded();
    }

    /** All half-edges, each in the low bits of a key, sorted by the two points that they join, whichever way they run. */
    private long[] sortedByEnds() {
        var keys = new long[mesh.count()];
        if (keys.length >= 1 << HALF_BITS || mesh.pointCount() >= 1 << POINT_BITS) {
            throw new BrokenMeshException("it has too many features");
        }
        for (int half = 0; half < keys.length; half++) {
            long low = Math.min(mesh.from(half), mesh.to(half));
            long high = Math.max(mesh.from(half), mesh.to(half));
            keys[half] = (low << POINT_BITS | high) << HALF_BITS | half;
        }
        Arrays.sort(keys);
        return keys;
    }

    private static int half(long key) {
        return (int) (key & (1 << HALF_BITS) - 1);
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
