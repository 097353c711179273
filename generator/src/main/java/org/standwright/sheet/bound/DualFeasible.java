package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Dual feasible functions for one side of the board: whatever sizes fit side by side on it have values that add up to 1
 * at most. Functions after S. Fekete, J. Schepers, A general framework for bounds for higher-dimensional orthogonal
 * packing problems (2004), and J. Carlier, F. Clautiaux, A. Moukrim, New reduction procedures and lower bounds for the
 * two-dimensional bin packing problem with fixed orientation (2007).
 */
interface DualFeasible {
    /** Numbers of parts that {@link #rounded} tries. */
    int MOST_PARTS = 12;

    /** Value of a size from 0 to the board's side. */
    double of(long size);

    /**
     * What sizes add up to at most that fit side by side on a board this long, which may be shorter than the side the
     * function is made for: the value of the length itself, since two sizes are never worth more than their sum.
     */
    default double ofBoard(long length) {
        return of(length);
    }

    /** Large sizes count as the whole side, sizes below k as nothing. */
    static DualFeasible whole(long side, long k) {
        return x -> x > side - k ? 1 : x < k ? 0 : (double) x / side;
    }

    /** Counts in steps of k, from above where the size is more than half. */
    static DualFeasible stepped(long side, long k) {
        double steps = side / k;
        return x -> {
            if (2 * x == side) {
                return 0.5;
            }
            return 2 * x > side ? 1 - (side - x) / k / steps : x / k / steps;
        };
    }

    /** Rounds to k-th parts, exact multiples of a (k+1)-th part excepted. */
    static DualFeasible rounded(long side, long k) {
        return x -> (k + 1) * x % side == 0 ? (double) x / side : (double) ((k + 1) * x / side) / k;
    }

    /** Those worth trying for these sizes; the first is size over side. */
    static List<DualFeasible> family(int side, Sizes sizes, int mostThresholds) {
        var family = new ArrayList<DualFeasible>();
        family.add(x -> (double) x / side);
        for (int k : thresholds(side, sizes, mostThresholds)) {
            family.add(whole(side, k));
            family.add(stepped(side, k));
            Counted.of(side, sizes, k).ifPresent(family::add);
        }
        IntStream.rangeClosed(1, MOST_PARTS).forEach(k -> family.add(rounded(side, k)));
        return family;
    }

    private static int[] thresholds(int side, Sizes sizes, int most) {
        var all = new TreeSet<Integer>();
        for (int size : sizes.distinct()) {
            all.addAll(List.of(size, size + 1, side - size, side - size + 1));
        }
        IntStream.rangeClosed(2, 6).forEach(parts -> all.add(side / parts));
        int[] useful = all.stream()
                .mapToInt(k -> k)
                .filter(k -> k >= 1 && 2L * k <= side)
                .toArray();
        int kept = Math.min(most, useful.length);
        return IntStream.range(0, kept)
                .map(i -> useful[(int) ((long) i * useful.length / kept)])
                .toArray();
    }
}
