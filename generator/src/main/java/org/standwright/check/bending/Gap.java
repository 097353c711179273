package org.standwright.check.bending;

import org.standwright.assembly.PlacedPart;

/**
 * A clear span from left to right.
 *
 * @param left what it begins at
 * @param right what it ends at
 */
record Gap(String left, String right, double x0, double x1) {
    /** What lies open between two parts. */
    static Gap between(PlacedPart left, PlacedPart right) {
        return new Gap(
                left.label(),
                right.label(),
                left.box().max().x(),
                right.box().min().x());
    }

    double length() {
        return x1 - x0;
    }

    boolean holds(double x) {
        return x > x0 && x < x1;
    }

    /** 'between left side and partition'. */
    String words() {
        return "between " + left + " and " + right;
    }
}
