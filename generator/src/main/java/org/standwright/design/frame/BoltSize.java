package org.standwright.design.frame;

import org.standwright.unit.Units;

/**
 * A bolt as a shop calls it: M8 where its diameter is a whole number of millimetres, else in inches.
 *
 * @param diameter mm
 */
public record BoltSize(double diameter) {
    /** Metric bolts are sold in steps of 5 mm, those in inches in steps of 1/4 in. */
    private static final double METRIC_STEP = 5;

    private static final double INCH_STEP = 25.4 / 4;
    /** Washers on plywood are at least this wide (shop practice) and three times their bolt (ISO 7093-1), mm. */
    private static final double LEAST_WASHER = 25;

    /** Diameter of a washer on wood, mm. */
    public double washer() {
        return Math.max(LEAST_WASHER, 3 * diameter);
    }

    /** The next length sold, mm. */
    public double soldLength(double least) {
        double step = isMetric() ? METRIC_STEP : INCH_STEP;
        return step * StrictMath.ceil(least / step - 1e-9);
    }

    /** The next length sold, mm in, name of bolt and length out. */
    public String ofLength(double least) {
        double length = soldLength(least);
        return this + " x " + (isMetric() ? Units.MM.bareLength(length) : Units.INCH.length(length));
    }

    private boolean isMetric() {
        return Math.abs(diameter - Math.rint(diameter)) < 1e-6;
    }

    @Override
    public String toString() {
        return isMetric() ? "M" + Math.round(diameter) : Units.INCH.length(diameter);
    }
}
