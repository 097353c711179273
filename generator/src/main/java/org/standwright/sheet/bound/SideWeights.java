package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One dual feasible function's values in one direction of the board.
 *
 * @param straight of each type as it lies straight
 * @param turned of each type as it lies turned
 * @param boards what a row on each kind of board adds up to at most
 */
record SideWeights(double[] straight, double[] turned, double[] boards) {
    static List<SideWeights> of(Sizes sizes, int[] boards, int mostThresholds) {
        int side = Arrays.stream(boards).max().orElseThrow();
        var all = DualFeasible.family(side, sizes, mostThresholds).stream()
                .map(function -> new SideWeights(
                        values(function, sizes.straight()),
                        values(function, sizes.turned()),
                        Arrays.stream(boards).mapToDouble(function::ofBoard).toArray()))
                .toList();
        return undominated(all);
    }

    private static double[] values(DualFeasible function, int[] sizes) {
        return Arrays.stream(sizes).mapToDouble(function::of).toArray();
    }

    /** Without those that another one beats or equals in every respect. */
    private static List<SideWeights> undominated(List<SideWeights> all) {
        var kept = new ArrayList<SideWeights>();
        for (var next : all) {
            if (kept.stream().noneMatch(other -> other.dominates(next))) {
                kept.removeIf(next::dominates);
                kept.add(next);
            }
        }
        return kept;
    }

    private boolean dominates(SideWeights other) {
        return noneBelow(straight, other.straight)
                && noneBelow(turned, other.turned)
                && noneBelow(other.boards, boards);
    }

    private static boolean noneBelow(double[] high, double[] low) {
        for (int i = 0; i < high.length; i++) {
            if (high[i] < low[i]) {
                return false;
            }
        }
        return true;
    }
}
