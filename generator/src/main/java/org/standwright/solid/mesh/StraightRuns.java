package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * Takes out the points at which an edge merely goes on straight. Such a point has two neighbours only; it lies on two
 * planes, and both faces lose it.
 */
final class StraightRuns {
    private static final int NONE = -1;
    private static final int SEVERAL = -2;
    /** How far off the line between its neighbours a point may be, 1/1024 mm. */
    private static final double OFF = 0.1;

    private final EdgeChain chain;
    private final Points points;
    private final int[] first;
    private final int[] second;

    private StraightRuns(EdgeChain chain, Points points) {
        this.chain = chain;
        this.points = points;
        first = new int[points.count()];
        second = new int[points.count()];
        Arrays.fill(first, NONE);
        Arrays.fill(second, NONE);
        for (int edge = 0; edge < chain.count(); edge++) {
            meet(chain.low(edge), chain.high(edge));
            meet(chain.high(edge), chain.low(edge));
        }
    }

    static EdgeChain joined(EdgeChain chain, Points points) {
        return new StraightRuns(chain, points).join();
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

    private EdgeChain join() {
        var within = new boolean[points.count()];
        for (int point = 0; point < within.length; point++) {
            within[point] = second[point] >= 0 && isStraight(point);
        }
        var sum = new EdgeSum();
        for (int edge = 0; edge < chain.count(); edge++) {
            if (!within[chain.from(edge)]) {
                sum.add(chain.plane(edge), chain.from(edge), end(chain.from(edge), chain.to(edge), within));
            }
        }
        return sum.total();
    }

    private boolean isStraight(int point) {
        int a = first[point];
        int b = second[point];
        double along = points.along(a, b, point);
        return along > 0 && along < 1 && points.off(a, b, along, point) < OFF;
    }

    private int end(int start, int next, boolean[] within) {
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
