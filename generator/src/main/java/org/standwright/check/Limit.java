package org.standwright.check;

import java.util.OptionalDouble;

/**
 * How far a figure may go before it is worth a word, before somebody has to watch out, and how far at all. One of them is
 * there, or more.
 *
 * @param side whether the figure has to stay below its limits or above them
 * @param note beyond which it is a note
 * @param caution beyond which it is a caution
 * @param stop beyond which it is a stop
 */
public record Limit(Side side, OptionalDouble note, OptionalDouble caution, OptionalDouble stop) {
    private static final OptionalDouble NONE = OptionalDouble.empty();

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
        if (note.isEmpty() && caution.isEmpty() && stop.isEmpty()) {
            throw new IllegalArgumentException("a limit needs a value for a note, a caution or a stop.");
        }
        if (caution.isPresent() && stop.isPresent() && side.isBeyond(caution.getAsDouble(), stop.getAsDouble())) {
            throw new IllegalArgumentException("a caution at " + caution.getAsDouble() + " comes after the stop at "
                    + stop.getAsDouble() + "; change them over.");
        }
    }

    public static Limit atMost(double stop) {
        return new Limit(Side.AT_MOST, NONE, NONE, OptionalDouble.of(stop));
    }

    public static Limit atMost(double caution, double stop) {
        return new Limit(Side.AT_MOST, NONE, OptionalDouble.of(caution), OptionalDouble.of(stop));
    }

    public static Limit cautionAbove(double caution) {
        return new Limit(Side.AT_MOST, NONE, OptionalDouble.of(caution), NONE);
    }

    public static Limit atLeast(double stop) {
        return new Limit(Side.AT_LEAST, NONE, NONE, OptionalDouble.of(stop));
    }

    public static Limit atLeast(double caution, double stop) {
        return new Limit(Side.AT_LEAST, NONE, OptionalDouble.of(caution), OptionalDouble.of(stop));
    }

    public static Limit cautionBelow(double caution) {
        return new Limit(Side.AT_LEAST, NONE, OptionalDouble.of(caution), NONE);
    }

    /** Where more only is worth a word. */
    public static Limit noteAbove(double note) {
        return new Limit(Side.AT_MOST, OptionalDouble.of(note), NONE, NONE);
    }

    /** Where less only is worth a word. */
    public static Limit noteBelow(double note) {
        return new Limit(Side.AT_LEAST, OptionalDouble.of(note), NONE, NONE);
    }

    /** Where less is worth a word first, and then a caution, which may be at the same figure. */
    public static Limit advisedBelow(double note, double caution) {
        return new Limit(Side.AT_LEAST, OptionalDouble.of(note), OptionalDouble.of(caution), NONE);
    }

    /** The first limit that a growing trouble meets. */
    public double first() {
        return note.orElseGet(() -> caution.orElseGet(stop::getAsDouble));
    }

    /** What comes of a figure; at the limit itself it is fine. */
    public Severity of(double figure) {
        if (isBeyond(figure, stop)) {
            return Severity.STOP;
        }
        if (isBeyond(figure, caution)) {
            return Severity.CAUTION;
        }
        return isBeyond(figure, note) ? Severity.NOTE : Severity.FINE;
    }

    private boolean isBeyond(double figure, OptionalDouble limit) {
        return limit.isPresent() && side.isBeyond(figure, limit.getAsDouble());
    }

    /** The same where only a share of it may be used, above 0 to 1. */
    public Limit tightened(double share) {
        double factor = side == Side.AT_MOST ? share : 1 / share;
        return new Limit(side, scaled(note, factor), scaled(caution, factor), scaled(stop, factor));
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
