package org.standwright.solid;

import java.util.stream.IntStream;

/** Surfaces that hang together: one for a board in one piece without a hollow. */
final class Shells {
    private final int[] leader;

    private Shells(int vertices) {
        leader = IntStream.range(0, vertices).toArray();
    }

    static int count(Solid solid) {
        var shells = new Shells(solid.vertexCount());
        for (int t = 0; t < solid.triangleCount(); t++) {
            shells.join(solid.corner(t, 0), solid.corner(t, 1));
            shells.join(solid.corner(t, 0), solid.corner(t, 2));
        }
        return (int) IntStream.range(0, shells.leader.length)
                .filter(vertex -> shells.find(vertex) == vertex)
                .count();
    }

    private void join(int a, int b) {
        leader[find(a)] = find(b);
    }

    private int find(int vertex) {
        int at = vertex;
        while (leader[at] != at) {
            leader[at] = leader[leader[at]];
            at = leader[at];
        }
        return at;
    }
}
