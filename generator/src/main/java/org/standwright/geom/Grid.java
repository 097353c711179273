package org.standwright.geom;

/** When two lengths of the model are the same length. */
public final class Grid {
    /** Lengths closer than this are the same, mm. */
    public static final double STEP = 1e-6;

    private Grid() {}

    public static boolean same(double a, double b) {
        return Math.abs(a - b) <= STEP;
    }

    /** Whether {@code a} is less than {@code b} by more than rounding. */
    public static boolean less(double a, double b) {
        return a < b - STEP;
    }
}
