package org.standwright.check;

import java.util.OptionalDouble;

/**
 * How far a figure may go before somebody has to watch out, and how far at all. One of the two may be missing.
 *
 * @param side whether the figure has to stay below its limits or above them
 * @param caution beyond which it is a caution
 * @param stop beyond which it is a stop
 */
public record Limit(Side side, OptionalDouble caution, OptionalDouble stop) {
    /** Which way is too far. */
    public enum Side {
        AT_MOST,
        AT_LEAST;

        /** By more than what sums of doubles leave behind. */
        boolean isBeyond(double figure, double limit) {
            double slack = 1e-9 * Math.abs(limit);
            return this == AT_MOST ? figure > limit + slack : figure < limit - slack;
        }
    }

    public Limit {
        if (caution.isEmpty() && stop.isEmpty()) {
            throw new IllegalArgumentException("a limit needs a value for a caution, a stop or both.");
        }
        if (caution.isPresent() && stop.isPresent() && side.isBeyond(caution.getAsDouble(), stop.getAsDouble())) {
            throw new IllegalArgumentException("a caution at " + caution.getAsDouble() + " comes after the stop at "
                    + stop.getAsDouble() + "; change them over.");
        }
    }

    public static Limit atMost(double stop) {
        return new Limit(Side.AT_MOST, OptionalDouble.empty(), OptionalDouble.of(stop));
    }

    public static Limit atMost(double caution, double stop) {
        return new Limit(Side.AT_MOST, OptionalDouble.of(caution), OptionalDouble.of(stop));
    }

    public static Limit cautionAbove(double caution) {
        return new Limit(Side.AT_MOST, OptionalDouble.of(caution), OptionalDouble.empty());
    }

    public static Limit atLeast(double stop) {
        return new Limit(Side.AT_LEAST, OptionalDouble.empty(), OptionalDouble.of(stop));
    }

    public static Limit atLeast(double caution, double stop) {
        return new Limit(Side.AT_LEAST, OptionalDouble.of(caution), OptionalDouble.of(stop));
    }

    public static Limit cautionBelow(double caution) {
        return new Limit(Side.AT_LEAST, OptionalDouble.of(caution), OptionalDouble.empty());
    }

    /** The first limit that a growing trouble meets. */
    public double first() {
        return caution.orElseGet(stop::getAsDouble);
    }

    /** What comes of a figure; at the limit itself it is fine. */
    public Severity of(double figure) {
        if (stop.isPresent() && side.isBeyond(figure, stop.getAsDouble())) {
            return Severity.STOP;
        }
        return caution.isPresent() && side.isBeyond(figure, caution.getAsDouble()) ? Severity.CAUTION : Severity.FINE;
    }

    /** The same where only a share of it may be used, above 0 to 1. */
    public Limit tightened(double share) {
        double factor = side == Side.AT_MOST ? share : 1 / share;
        return new Limit(side, scaled(caution, factor), scaled(stop, factor));
    }

    /** How much of the first limit a figure uses: 0 for nothing, 1 at the limit, more beyond it, without end. */
    double used(double figure) {
        double part = side == Side.AT_MOST ? figure : first();
        double whole = side == Side.AT_MOST ? first() : figure;
        if (whole > 0) {
            return Math.max(0, part / whole);
        }
        return of(figure) == Severity.FINE ? 0 : Double.POSITIVE_INFINITY;
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * factor) : value;
    }
}
