package org.standwright.sheet;

/** The sheet planner's integer length: 1/3200 mm. Parts are rounded up to it, stock down. */
public final class SheetUnit {
    public static final int PER_MM = 3200;

    private static final double ROUNDING = 1e-6;

    private SheetUnit() {}

    /** A length that must fit at least this much: up to the next unit. */
    public static int up(double mm) {
        return Math.toIntExact((long) Math.ceil(mm * PER_MM - ROUNDING * PER_MM));
    }

    /** A length of which no more than this is there: down to the next unit. */
    public static int down(double mm) {
        return Math.toIntExact((long) Math.floor(mm * PER_MM + ROUNDING * PER_MM));
    }

    public static double mm(long units) {
        return (double) units / PER_MM;
    }

    /** An area of units², in m². */
    public static double squareMetres(double units) {
        return units / PER_MM / PER_MM * 1e-6;
    }
}
