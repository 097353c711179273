package org.standwright.sheet.cover;

import java.util.Arrays;
import java.util.List;

/**
 * A choice of patterns for no more than so much, taken as the linear program uses them most: a start for a search that
 * finds places for what is still missing.
 */
public final class PatternDive {
    private static final double NEARLY_ONE = 0.95;
    private static final int MOST_PIVOTS = 5000;

    private PatternDive() {}

    /**
     * @param needed pieces of each type
     * @param available boards of each kind
     * @param most that the choice may cost
     * @return how often each pattern is used
     */
    public static int[] of(List<Pattern> patterns, int[] needed, int[] available, long most) {
        int[] uses = new int[patterns.size()];
        int[] left = needed.clone();
        int[] boards = available.clone();
        long rest = most;
        while (Arrays.stream(left).anyMatch(need -> need > 0)) {
            int[] times = times(patterns, left, boards, rest, most);
            boolean any = false;
            for (int j = 0; j < times.length; j++) {
                var pattern = patterns.get(j);
                while (times[j] > 0 && pattern.cost() <= rest && boards[pattern.kind()] > 0) {
                    times[j]--;
                    uses[j]++;
                    boards[pattern.kind()]--;
                    rest -= pattern.cost();
                    any = true;
                    for (int type = 0; type < left.length; type++) {
                        left[type] -= pattern.counts()[type];
                    }
                }
            }
            if (!any) {
                return uses;
            }
        }
        return uses;
    }

    /** What to take next: all that is used about once or more, or else what is used most. */
    private static int[] times(List<Pattern> patterns, int[] left, int[] boards, long rest, long most) {
        int[] limits = new int[patterns.size()];
        Arrays.setAll(
                limits,
                j -> patterns.get(j).isEmpty() || patterns.get(j).cost() > rest
                        ? 0
                        : boards[patterns.get(j).kind()]);
        var relaxed = new Relaxed(patterns, left, boards, limits, 1 + 2.0 * most);
        if (!relaxed.program.solve(MOST_PIVOTS)) {
            return new int[patterns.size()];
        }
        double[] amounts = relaxed.amounts();
        int[] times = new int[amounts.length];
        int largest = 0;
        boolean any = false;
        for (int j = 0; j < amounts.length; j++) {
            times[j] = (int) Math.floor(amounts[j] + 1 - NEARLY_ONE);
            any |= times[j] > 0;
            largest = amounts[j] > amounts[largest] ? j : largest;
        }
        if (!any && amounts[largest] > 0) {
            times[largest] = 1;
        }
        return times;
    }
}
