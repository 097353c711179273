package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * Takes out the points at which an edge merely goes on straight. Such a point has two neighbours only; it lies on two
 * planes, and both faces lose it.
 */
final class StraightRuns {
    private static final int NONE = -1;
    private static final int SEVERAL = -2;

    private final Edges edges;
    private final int[] first;
    private final int[] second;
    private final boolean[] within;

    private StraightRuns(Edges edges, int points) {
        this.edges = edges;
        first = new int[points];
        second = new int[points];
        Arrays.fill(first, NONE);
        Arrays.fill(second, NONE);
        within = new boolean[points];
        for (int edge = 0; edge < edges.count(); edge++) {
            meet(edges.from(edge), edges.to(edge));
            meet(edges.to(edge), edges.from(edge));
        }
    }

    /**
     * Edges sorted by plane, joined; they stay sorted.
     *
     * @param off how far off the line between its neighbours a point may be, 1/1024 mm
     * @param kept points that must stay
     */
    static Edges joined(Edges edges, Points points, double off, boolean[] kept) {
        var runs = new StraightRuns(edges, points.count());
        boolean any = false;
        for (int point = 0; point < kept.length; point++) {
            runs.within[point] = !kept[point] && runs.goesOn(point, points, off);
            any |= runs.within[point];
        }
        return any ? runs.join() : edges;
    }

    private void meet(int point, int neighbour) {
        if (first[point] == NONE) {
            first[point] = neighbour;
        } else if (first[point] != neighbour && second[point] == NONE) {
            second[point] = neighbour;
        } else if (first[point] != neighbour && second[point] != neighbour) {
            second[point] = SEVERAL;
        }
    }

    private boolean goesOn(int point, Points points, double off) {
        return second[point] >= 0 && points.isBetween(first[point], second[point], point, off);
    }

    private Edges join() {
        var joined = new Edges(edges.count());
        for (int edge = 0; edge < edges.count(); edge++) {
            int from = edges.from(edge);
            if (!within[from]) {
                joined.add(edges.plane(edge), from, end(from, edges.to(edge)));
            }
        }
        return joined;
    }

    private int end(int start, int next) {
        int from = start;
        int to = next;
        while (within[to]) {
            int on = first[to] == from ? second[to] : first[to];
            from = to;
            to = on;
        }
        return to;
    }
}
