package org.standwright.check.fastener;

/** What is left of a lateral load when the fastener stands in end grain: 2/3 (a handbook of formulas, confirmed). */
public final class EndGrain {
    private static final double SHARE = 2.0 / 3;

    private EndGrain() {}

    /**
     * @param inSideGrain allowable lateral load in side grain, N
     */
    public static double lateral(double inSideGrain) {
        return SHARE * inSideGrain;
    }
}
