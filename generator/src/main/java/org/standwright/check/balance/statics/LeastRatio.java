package org.standwright.check.balance.statics;

import java.util.Comparator;
import java.util.List;

/**
 * The worst filling: contents count only where they tip.
 *
 * <p>Nobody knows what will lie in a drawer, so each thing that may be there is taken in or left out, whichever makes
 * restoring over overturning smallest. A thing lowers the ratio exactly when its own ratio is lower; so those are
 * added, and the lower ratio is tried again until nothing changes (Dinkelbach's method for a quotient of sums, which
 * ends at the smallest one). So contents that are heavier never make an open drawer safer. Where only one of several
 * loadings can be, as with drawers of which one opens at a time, the worst of them is taken in the same way.
 */
public final class LeastRatio {
    private static final double SAME = 1e-12;

    private LeastRatio() {}

    /** The worst when one loading of every list acts. */
    public static Moments of(List<List<Loading>> choices) {
        var worst = worstAt(choices, Moments.LARGEST);
        var next = worstAt(choices, worst.ratio());
        while (next.ratio() < worst.ratio() - SAME) {
            worst = next;
            next = worstAt(choices, worst.ratio());
        }
        return worst;
    }

    /** Moment that is missing for a ratio when the worst filling counts, N mm; 0 where every filling reaches it. */
    public static double missing(double ratio, List<List<Loading>> choices) {
        return worstAt(choices, ratio).missing(ratio);
    }

    private static Moments worstAt(List<List<Loading>> choices, double ratio) {
        return choices.stream()
                .map(choice -> choice.stream()
                        .map(loading -> loading.worstAt(ratio))
                        .min(Comparator.comparingDouble(moments -> moments.balance(ratio)))
                        .orElse(Moments.NONE))
                .reduce(Moments.NONE, Moments::plus);
    }
}
