package org.standwright.check.balance.statics;

/**
 * What holds a stand and what tips it, about one edge.
 *
 * @param restoring sum of the moments that hold it, N mm
 * @param overturning sum of the moments that tip it, N mm
 */
public record Moments(double restoring, double overturning) {
    public static final Moments NONE = new Moments(0, 0);

    /** Highest ratio that is told apart: from here on nothing tips. */
    public static final double LARGEST = 99;

    /** A moment that restores, or one below 0 that overturns. */
    public static Moments restoring(double moment) {
        return moment >= 0 ? new Moments(moment, 0) : new Moments(0, -moment);
    }

    public Moments plus(Moments other) {
        return new Moments(restoring + other.restoring, overturning + other.overturning);
    }

    public Moments times(double factor) {
        return new Moments(restoring * factor, overturning * factor);
    }

    /** Restoring over overturning, {@link #LARGEST} at most: below 1 it tips. */
    public double ratio() {
        return restoring >= LARGEST * overturning ? LARGEST : restoring / overturning;
    }

    /** Moment that is missing for a ratio, N mm; 0 where it is reached. */
    public double missing(double ratio) {
        return Math.max(0, ratio * overturning - restoring);
    }

    /** What is left after taking {@code share} times what tips from what holds. */
    double balance(double share) {
        return restoring - share * overturning;
    }
}
