package org.standwright.check.fastener;

/** Bending yield strength of wire by its nominal diameter: NDS Table I1, as quoted; psi and inches. */
final class WireYield {
    private WireYield() {}

    static double of(double diameter) {
        if (diameter <= 0.142) {
            return 100_000;
        }
        if (diameter <= 0.177) {
            return 90_000;
        }
        return diameter <= 0.236 ? 80_000 : 70_000;
    }
}
