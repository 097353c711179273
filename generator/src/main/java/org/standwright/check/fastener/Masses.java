package org.standwright.check.fastener;

import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;

/** What parts of a stand weigh. */
final class Masses {
    private Masses() {}

    /** Of everything that moves with a group, kg. */
    static double ofGroup(LoadedStand stand, String group) {
        return stand.weights().stream()
                .filter(weight -> weight.group().equals(group))
                .mapToDouble(Weight::mass)
                .sum();
    }
}
