package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * The boundaries of all faces as directed edges, each with the number of its face's plane; faces lie to the left. The
 * faces of a closed solid hold every edge as often in one direction as in the other.
 *
 * <p>An edge is one long: 19 bits of plane, 22 bits each of the lower and the higher end, and a bit that is set when it
 * runs from the higher to the lower.
 */
final class EdgeChain {
    private static final int POINT_BITS = 22;
    private static final int PLANE_BITS = 19;
    private static final long POINT_MASK = (1L << POINT_BITS) - 1;

    private final long[] edges;

    EdgeChain(long[] edges) {
        this.edges = edges;
    }

    int count() {
        return edges.length;
    }

    int plane(int edge) {
        return (int) (edges[edge] >>> 2 * POINT_BITS + 1);
    }

    int from(int edge) {
        return isDownward(edge) ? high(edge) : low(edge);
    }

    int to(int edge) {
        return isDownward(edge) ? low(edge) : high(edge);
    }

    int low(int edge) {
        return (int) (edges[edge] >>> POINT_BITS + 1 & POINT_MASK);
    }

    int high(int edge) {
        return (int) (edges[edge] >>> 1 & POINT_MASK);
    }

    boolean isDownward(int edge) {
        return (edges[edge] & 1) != 0;
    }

    /** One past the last edge on the plane of edge {@code start}; edges of a plane stand together. */
    int endOfPlane(int start) {
        int end = start;
        while (end < count() && plane(end) == plane(start)) {
            end++;
        }
        return end;
    }

    boolean isSame(EdgeChain other) {
        return Arrays.equals(edges, other.edges);
    }

    static long pack(int plane, int from, int to) {
        if (plane >= 1 << PLANE_BITS - 1 || Math.max(from, to) > POINT_MASK) {
            throw new BrokenMeshException("it has too many features");
        }
        long ends = (long) Math.min(from, to) << POINT_BITS | Math.max(from, to);
        return (long) plane << 2 * POINT_BITS + 1 | ends << 1 | (from > to ? 1 : 0);
    }

    /** The edge from the lower to the higher end between the ends of a packed edge. */
    static long upward(long edge) {
        return edge & ~1L;
    }

    static long downward(long edge) {
        return edge | 1;
    }
}
