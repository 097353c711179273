package org.standwright.check.fastener;

import org.standwright.geom.Grid;

/**
 * Dowel bearing strength Fe: how hard a fastener may press sideways on wood, N/mm².
 *
 * <p>Thinner than 1/4 in, in any direction 16,600 G^1.84 psi; else along the grain 11,200 G and across it 6,100 G^1.45 /
 * √D, D the nominal diameter in inches; rounded to 50 psi as the tables are (NDS 2018 Table 12.3.3, as quoted).
 */
public final class DowelBearing {
    private static final double QUARTER_INCH = 0.25 * Customary.INCH;
    private static final double STEP = 50;

    private DowelBearing() {}

    /** For a load along the grain. */
    public static double along(Fastener fastener, double gravity) {
        return isSmall(fastener) ? small(gravity) : rounded(11_200 * gravity);
    }

    /** For a load across the grain. */
    public static double across(Fastener fastener, double gravity) {
        return isSmall(fastener)
                ? small(gravity)
                : rounded(
                        6_100 * StrictMath.pow(gravity, 1.45) / StrictMath.sqrt(fastener.diameter() / Customary.INCH));
    }

    /** Of a fastener thinner than 1/4 in, in any direction. */
    public static double small(double gravity) {
        return rounded(unroundedSmall(gravity));
    }

    /** The same as the formula gives it, psi. */
    static double unroundedSmall(double gravity) {
        return 16_600 * StrictMath.pow(gravity, 1.84);
    }

    private static boolean isSmall(Fastener fastener) {
        return Grid.less(fastener.diameter(), QUARTER_INCH);
    }

    private static double rounded(double psi) {
        return Math.rint(psi / STEP) * STEP * Customary.PSI;
    }
}
