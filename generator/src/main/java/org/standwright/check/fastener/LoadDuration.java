package org.standwright.check.fastener;

/**
 * How long a fastener carries its load, which multiplies what it may carry; without a unit.
 *
 * <p>NDS Table 2.3.2, as quoted. The factor 2.0 for impact is not for connections and is left out on purpose.
 */
public enum LoadDuration {
    /** What is stored or hung. */
    PERMANENT(0.9),
    TEN_YEARS(1.0),
    TWO_MONTHS(1.15),
    SEVEN_DAYS(1.25),
    /** A hand's push, a wind's gust. */
    TEN_MINUTES(1.6);

    private final double factor;

    LoadDuration(double factor) {
        this.factor = factor;
    }

    public double factor() {
        return factor;
    }
}
