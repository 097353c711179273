package org.standwright.check;

import org.standwright.unit.Units;

/**
 * A number that was put into a rule's formula.
 *
 * @param symbol as the formula writes it
 * @param value in the unit of {@code quantity}
 */
public record Input(String symbol, String what, Quantity quantity, double value) {
    public String words(Units units) {
        return quantity.words(value, units);
    }
}
