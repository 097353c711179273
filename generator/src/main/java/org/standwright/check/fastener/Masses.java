package org.standwright.check.fastener;

import org.standwright.check.LoadedStand;
import org.standwright.check.Weight;

/** What parts of a stand weigh, and how hard that pulls. */
final class Masses {
    /** Standard gravity, N per kg. */
    private static final double NEWTON = 9.80665;

    private Masses() {}

    /** Of everything that moves with a group, kg. */
    static double ofGroup(LoadedStand stand, String group) {
        return stand.weights().stream()
                .filter(weight -> weight.group().equals(group))
                .mapToDouble(Weight::mass)
                .sum();
    }

    /** N. */
    static double force(double mass) {
        return mass * NEWTON;
    }
}
