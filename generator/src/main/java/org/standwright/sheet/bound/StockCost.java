package org.standwright.sheet.bound;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.BoardKind;

/**
 * The least that boards cost which together hold a given weight, when it is known what one of each kind holds at most.
 * Boards are chosen whole; where that takes too long, the answer for divisible boards is rounded up instead.
 */
final class StockCost {
    /** What sums of doubles may be too large by, in parts of the whole. */
    private static final double ROUNDING = 1e-9;

    private static final int MOST_STEPS = 5000;

    private final List<BoardKind> kinds;
    /** All costs are multiples of it. */
    private final long unit;

    StockCost(List<BoardKind> kinds) {
        this.kinds = kinds;
        unit = Math.max(1, kinds.stream().mapToLong(BoardKind::cost).reduce(0, StockCost::commonDivisor));
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    /** Cost if boards could be bought in parts: from the cheapest for what they hold on. */
    double inParts(double weight, double[] most) {
        return inParts(weight, most, cheapestFirst(most), 0);
    }

    /** Cost of whole boards, never above that of any choice that holds the weight. */
    long least(double weight, double[] most) {
        double needed = weight * (1 - ROUNDING) - ROUNDING;
        int[] order = cheapestFirst(most);
        return new Choice(most, order, roundedUp(inParts(needed, most, order, 0))).least(needed);
    }

    private double inParts(double weight, double[] most, int[] order, int from) {
        double cost = 0;
        double left = weight;
        for (int i = from; i < order.length && left > 0; i++) {
            var kind = kinds.get(order[i]);
            double boards = Math.min(kind.count(), left / most[order[i]]);
            cost += boards * kind.cost();
            left -= boards * most[order[i]];
        }
        return cost;
    }

    /** The next cost that boards can have. */
    long roundedUp(double cost) {
        return (long) Math.ceil(cost / unit * (1 - ROUNDING) - ROUNDING) * unit;
    }

    /** Kinds that hold anything. */
    private int[] cheapestFirst(double[] most) {
        var held = IntStream.range(0, most.length).filter(kind -> most[kind] > 0);
        if (most.length == 1) {
            return held.toArray();
        }
        return held.boxed()
                .sorted((a, b) -> Double.compare(
                        kinds.get(a).cost() / most[a], kinds.get(b).cost() / most[b]))
                .mapToInt(kind -> kind)
                .toArray();
    }

    /** How many of each kind, tried in depth. */
    private final class Choice {
        private final double[] most;
        private final int[] order;
        private final long atLeast;
        private long best = Long.MAX_VALUE;
        private int steps;

        Choice(double[] most, int[] order, long atLeast) {
            this.most = most;
            this.order = order;
            this.atLeast = atLeast;
        }

        long least(double weight) {
            choose(0, weight, 0);
            return best == Long.MAX_VALUE || steps > MOST_STEPS ? atLeast : best;
        }

        private void choose(int at, double left, long cost) {
            if (left <= 0) {
                best = Math.min(best, cost);
                return;
            }
            if (at == order.length
                    || ++steps > MOST_STEPS
                    || best <= atLeast
                    || cost + roundedUp(inParts(left, most, order, at)) >= best) {
                return;
            }
            var kind = kinds.get(order[at]);
            double holds = most[order[at]];
            int all = (int) Math.min(kind.count(), Math.ceil(left / holds));
            // what costs nothing is used up first
            for (int boards = all; boards >= (kind.cost() == 0 ? all : 0); boards--) {
                choose(at + 1, left - boards * holds, cost + boards * kind.cost());
            }
        }
    }
}
