package org.standwright.solid.mesh;

import java.util.Arrays;

/** The half-edges of a mesh sorted by the two points that they join, whichever way they run. */
final class HalfEdgeOrder {
    private static final int POINT_BITS = 21;
    private static final int HALF_BITS = 22;

    private final long[] keys;

    HalfEdgeOrder(HalfEdges mesh) {
        keys = new long[mesh.count()];
        if (keys.length >= 1 << HALF_BITS || mesh.pointCount() >= 1 << POINT_BITS) {
            throw new BrokenMeshException("it has too many features");
        }
        for (int half = 0; half < keys.length; half++) {
            long low = Math.min(mesh.from(half), mesh.to(half));
            long high = Math.max(mesh.from(half), mesh.to(half));
            keys[half] = (low << POINT_BITS | high) << HALF_BITS | half;
        }
        Arrays.sort(keys);
    }

    int count() {
        return keys.length;
    }

    /** The half-edges from place {@code start} on that join the same two points. */
    int[] sameEnds(int start) {
        int end = start;
        while (end < keys.length && keys[end] >> HALF_BITS == keys[start] >> HALF_BITS) {
            end++;
        }
        return Arrays.stream(keys, start, end)
                .mapToInt(key -> (int) (key & (1 << HALF_BITS) - 1))
                .toArray();
    }
}
