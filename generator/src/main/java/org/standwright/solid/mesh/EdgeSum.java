package org.standwright.solid.mesh;

import java.util.Arrays;

/** Collects directed edges and adds them up: an edge and its opposite on the same plane cancel. */
final class EdgeSum {
    private long[] edges = new long[256];
    private int count;

    void add(int plane, int from, int to) {
        if (from == to) {
            return;
        }
        if (count == edges.length) {
            edges = Arrays.copyOf(edges, 2 * count);
        }
        edges[count++] = EdgeChain.pack(plane, from, to);
    }

    /** What is left, sorted by plane, then by the numbers of the ends. */
    EdgeChain total() {
        Arrays.sort(edges, 0, count);
        int kept = 0;
        for (int start = 0; start < count; ) {
            int forward = start;
            while (forward < count && edges[forward] == EdgeChain.upward(edges[start])) {
                forward++;
            }
            int end = forward;
            while (end < count && edges[end] == EdgeChain.downward(edges[start])) {
                end++;
            }
            int net = (forward - start) - (end - forward);
            long edge = net > 0 ? EdgeChain.upward(edges[start]) : EdgeChain.downward(edges[start]);
            for (int i = 0; i < Math.abs(net); i++) {
                edges[kept++] = edge;
            }
            start = end;
        }
        return new EdgeChain(Arrays.copyOf(edges, kept));
    }
}
