package org.standwright.sheet.cover;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest choice of patterns that has enough pieces of each type; pieces too many do no harm. Tries in depth what
 * the linear program uses most, first with and then without it, and leaves out what can't be part of anything cheaper
 * (M. Monaci, P. Toth, A set-covering-based heuristic approach for bin-packing problems, 2006, for the idea to choose
 * from patterns met on the way). The same question gets the same answer.
 */
public final class PatternCover {
    private static final double ROUNDING = 1e-6;
    private static final int MOST_PIVOTS = 5000;

    private final List<Pattern> patterns;
    private final long unit;
    private final int mostNodes;
    private int nodes;
    private long best;
    private Optional<int[]> found = Optional.empty();

    private PatternCover(List<Pattern> patterns, long below, int mostNodes) {
        this.patterns = patterns;
        this.mostNodes = mostNodes;
        best = below;
        unit = Math.max(1, patterns.stream().mapToLong(Pattern::cost).reduce(0, PatternCover::commonDivisor));
    }

    /**
     * @param needed pieces of each type
     * @param available boards of each kind
     * @param below a choice is worth nothing unless it costs less, such as the plan at hand
     * @param mostNodes linear programs to solve at most
     * @return how often each pattern is used; empty if nothing cheaper was found
     */
    public static Optional<int[]> cheaper(
            List<Pattern> patterns, int[] needed, int[] available, long below, int mostNodes) {
        var cover = new PatternCover(patterns, below, mostNodes);
        int[] uses = new int[patterns.size()];
        int[] most = new int[patterns.size()];
        Arrays.setAll(
                most,
                j -> patterns.get(j).isEmpty() ? 0 : available[patterns.get(j).kind()]);
        cover.choose(needed.clone(), available.clone(), uses, most, 0);
        return cover.found;
    }

    private static long commonDivisor(long a, long b) {
        return b == 0 ? a : commonDivisor(b, a % b);
    }

    private void choose(int[] needed, int[] available, int[] uses, int[] most, long cost) {
        if (cost >= best) {
            return;
        }
        if (Arrays.stream(needed).allMatch(need -> need <= 0)) {
            best = cost;
            found = Optional.of(uses.clone());
            return;
        }
        if (++nodes > mostNodes) {
            return;
        }
        var relaxed = new Relaxed(patterns, needed, available, most, 1 + 2.0 * best);
        if (!relaxed.program.solve(MOST_PIVOTS) || !relaxed.program.isCovered()) {
            return;
        }
        double least = relaxed.program.cost();
        if (cost + roundedUp(least) >= best) {
            return;
        }
        long mostAllowed = Math.floorDiv(best - 1, unit) * unit;
        int[] fewer = relaxed.useful(most, mostAllowed - cost - least + ROUNDING * Math.max(1, best));
        double[] amounts = relaxed.amounts();
        int chosen = 0;
        for (int j = 1; j < amounts.length; j++) {
            chosen = amounts[j] > amounts[chosen] + ROUNDING ? j : chosen;
        }
        int times = Math.min(fewer[chosen], Math.max(1, (int) Math.floor(amounts[chosen] + ROUNDING)));
        if (times > 0) {
            use(chosen, times, needed, available, uses, fewer, cost);
            fewer[chosen] = times - 1;
            choose(needed, available, uses, fewer, cost);
        }
    }

    private void use(int chosen, int times, int[] needed, int[] available, int[] uses, int[] most, long cost) {
        var pattern = patterns.get(chosen);
        int[] left = needed.clone();
        for (int type = 0; type < left.length; type++) {
            left[type] -= times * pattern.counts()[type];
        }
        int[] boards = available.clone();
        boards[pattern.kind()] -= times;
        int[] mostLeft = most.clone();
        mostLeft[chosen] -= times;
        for (int j = 0; j < mostLeft.length; j++) {
            mostLeft[j] = Math.min(mostLeft[j], boards[patterns.get(j).kind()]);
        }
        uses[chosen] += times;
        choose(left, boards, uses, mostLeft, cost + times * pattern.cost());
        uses[chosen] -= times;
    }

    private long roundedUp(double cost) {
        return (long) Math.ceil(cost / unit - ROUNDING) * unit;
    }
}
