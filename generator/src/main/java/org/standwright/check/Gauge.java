package org.standwright.check;

import org.standwright.unit.Units;

/**
 * A figure beside its limits.
 *
 * @param figure in the unit of {@code quantity}; finite
 */
public record Gauge(Quantity quantity, double figure, Limit limit) {
    public Gauge {
        if (!Double.isFinite(figure)) {
            throw new IllegalArgumentException("a figure of " + figure + " cannot be judged; give a number.");
        }
    }

    public Severity severity() {
        return limit.of(figure);
    }

    /** How much of the first limit is used: 1 at the limit, more beyond it. */
    public double used() {
        return limit.used(figure);
    }

    /** The same where only a share of the limit may be used. */
    public Gauge tightened(double share) {
        return new Gauge(quantity, figure, limit.tightened(share));
    }

    /** 'at most 0.5 mm; beyond 1.5 mm it stops'. */
    public String limitWords(Units units) {
        var side = limit.side() == Limit.Side.AT_MOST ? "at most " : "at least ";
        var first = side + quantity.words(limit.first(), units);
        return limit.caution().isPresent() && limit.stop().isPresent()
                ? first
                        + (limit.side() == Limit.Side.AT_MOST ? ", a stop above " : ", a stop below ")
                        + quantity.words(limit.stop().getAsDouble(), units)
                : first;
    }

    /** '0.4 mm'. */
    public String figureWords(Units units) {
        return quantity.words(figure, units);
    }
}
