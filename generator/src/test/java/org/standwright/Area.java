package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

/** A rectangle of a report seen from the front, mm: x to the right, z up. */
record Area(double x0, double z0, double x1, double z1) {
    private static final double ROUNDING = 1e-6;

    static Area of(Entry entry) {
        return new Area(entry.number("/x0"), entry.number("/z0"), entry.number("/x1"), entry.number("/z1"));
    }

    double width() {
        return x1 - x0;
    }

    double height() {
        return z1 - z0;
    }

    /** Asserts that a report says the same. */
    void isReported(Entry entry, String what) {
        var reported = of(entry);
        same(reported.x0, x0, "left of " + what);
        same(reported.x1, x1, "right of " + what);
        same(reported.z0, z0, "bottom of " + what);
        same(reported.z1, z1, "top of " + what);
    }

    static void same(double reported, double expected, String what) {
        assertThat(reported).as(what).isCloseTo(expected, within(ROUNDING));
    }
}
