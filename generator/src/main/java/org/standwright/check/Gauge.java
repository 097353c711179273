package org.standwright.check;

import java.util.Locale;
import org.standwright.unit.Units;

/**
 * A figure beside its limits.
 *
 * @param figure in the unit of {@code quantity}; finite
 */
public record Gauge(Quantity quantity, double figure, Limit limit) {
    private static final int MOST_WORDS = 99;

    public Gauge {
        if (!Double.isFinite(figure)) {
            throw new IllegalArgumentException("a figure of " + figure + " cannot be judged; give a number.");
        }
    }

    public Severity severity() {
        return limit.of(figure);
    }

    /** How much of the first limit is used: 1 at the limit, more beyond it, infinite where nothing may be there at all. */
    public double used() {
        return limit.used(figure);
    }

    /** '0.41'; what is beyond the limit never reads 1.00, and what is within it never more. */
    public String usedWords() {
        double used = used();
        if (used > MOST_WORDS) {
            return "over " + MOST_WORDS;
        }
        boolean beyond = severity() != Severity.FINE;
        double shown = Math.round(used * 100) / 100.0;
        return String.format(Locale.ROOT, "%.2f", beyond ? Math.max(1.01, shown) : Math.min(1, shown));
    }

    /** The same where only a share of the limit may be used. */
    public Gauge tightened(double share) {
        return new Gauge(quantity, figure, limit.tightened(share));
    }

    /** 'at most 0.5 mm, a stop above 1.5 mm', or 'at most 37 N, a caution above 90 N'. */
    public String limitWords(Units units) {
        var first = firstLimitWords(units);
        if (limit.stop().isPresent() && limit.first() != limit.stop().getAsDouble()) {
            return first + beyond(", a stop", limit.stop().getAsDouble(), units);
        }
        return limit.caution().isPresent() && limit.first() != limit.caution().getAsDouble()
                ? first + beyond(", a caution", limit.caution().getAsDouble(), units)
                : first;
    }

    private String beyond(String what, double value, Units units) {
        return what + (limit.side() == Limit.Side.AT_MOST ? " above " : " below ") + quantity.words(value, units);
    }

    /** 'at most 0.5 mm': where a growing trouble is first met. */
    public String firstLimitWords(Units units) {
        return (limit.side() == Limit.Side.AT_MOST ? "at most " : "at least ") + quantity.words(limit.first(), units);
    }

    /** '0.4 mm'. */
    public String figureWords(Units units) {
        return quantity.words(figure, units);
    }
}
