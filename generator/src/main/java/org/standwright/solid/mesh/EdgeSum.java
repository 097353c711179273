package org.standwright.solid.mesh;

import java.util.Arrays;

/** Adds directed edges up: an edge and its opposite on the same plane cancel. */
final class EdgeSum {
    private static final int NONE = -1;

    private final Edges edges;
    /** By point: the last edge on the plane at hand that starts there and has not cancelled. */
    private final int[] latest;
    /** By edge: the one before it that starts at the same point. */
    private final int[] earlier;

    private final boolean[] cancelled;
    private int left;

    private EdgeSum(Edges edges, int points) {
        this.edges = edges;
        latest = new int[points];
        Arrays.fill(latest, NONE);
        earlier = new int[edges.count()];
        cancelled = new boolean[edges.count()];
        left = edges.count();
    }

    /** What is left of edges between points numbered below {@code points}, sorted by plane. */
    static Edges of(Edges edges, int points) {
        var sum = new EdgeSum(edges.byPlane(), points);
        for (int start = 0; start < edges.count(); ) {
            int end = sum.edges.endOfPlane(start);
            sum.addUp(start, end);
            start = end;
        }
        return sum.left == edges.count() ? sum.edges : sum.rest();
    }

    private void addUp(int start, int end) {
        for (int edge = start; edge < end; edge++) {
            add(edge);
        }
        for (int edge = start; edge < end; edge++) {
            latest[edges.from(edge)] = NONE;
        }
    }

    private void add(int edge) {
        int from = edges.from(edge);
        int to = edges.to(edge);
        int last = NONE;
        for (int back = latest[to]; back != NONE; back = earlier[back]) {
            if (edges.to(back) == from) {
                unlink(back, last);
                cancel(edge, back);
                return;
            }
            last = back;
        }
        earlier[edge] = latest[from];
        latest[from] = edge;
    }

    /** Takes {@code edge} from the list of its point, in which it comes after {@code last}. */
    private void unlink(int edge, int last) {
        if (last == NONE) {
            latest[edges.from(edge)] = earlier[edge];
        } else {
            earlier[last] = earlier[edge];
        }
    }

    private void cancel(int edge, int back) {
        cancelled[edge] = true;
        cancelled[back] = true;
        left -= 2;
    }

    private Edges rest() {
        var rest = new Edges(left);
        for (int edge = 0; edge < cancelled.length; edge++) {
            if (!cancelled[edge]) {
                rest.add(edges.plane(edge), edges.from(edge), edges.to(edge));
            }
        }
        return rest;
    }
}
