package org.standwright.check.wall.statics;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;

/**
 * How much of a screw is used, each as a share of what it may carry: 1 at the limit, infinite where it holds nothing.
 *
 * @param withdrawal pulled alone
 * @param lateral across alone
 * @param combined both at once, NDS 12.4
 * @param linear the simple screen, the sum of both: never below {@code combined}
 * @param pullThrough of the head through the strip; 0 where nothing rates it
 */
public record ScrewUse(double withdrawal, double lateral, double combined, double linear, double pullThrough) {
    /** Which of them gives first; of equals the first in their order. The linear screen is not one of them. */
    public WeakLink weakest() {
        return all().entrySet().stream()
                .max(Comparator.<Map.Entry<WeakLink, Double>>comparingDouble(Map.Entry::getValue)
                        .thenComparing(Map.Entry.comparingByKey(Comparator.reverseOrder())))
                .orElseThrow()
                .getKey();
    }

    /** The largest share of {@link #weakest()}. */
    public double most() {
        return all().get(weakest());
    }

    private Map<WeakLink, Double> all() {
        var all = new EnumMap<WeakLink, Double>(WeakLink.class);
        all.put(WeakLink.WITHDRAWAL, withdrawal);
        all.put(WeakLink.LATERAL, lateral);
        all.put(WeakLink.COMBINED, combined);
        all.put(WeakLink.PULL_THROUGH, pullThrough);
        return all;
    }
}
