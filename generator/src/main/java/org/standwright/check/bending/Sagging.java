package org.standwright.check.bending;

import org.standwright.check.Input;
import org.standwright.check.Quantity;

/** One span under what stays on it for years. */
record Sagging(Gap gap, SimpleSpan span, Creep creep) {
    /** After years, mm. */
    double sag() {
        return creep.longTerm(span.deflection());
    }

    double length() {
        return span.length();
    }

    /** All that is on it, N. */
    double load() {
        return span.loads().stream().mapToDouble(SpanLoad::total).sum();
    }

    /** Numbers for the formula. */
    Input[] inputs() {
        return new Input[] {
            new Input("W", "all that is on it, itself included", Quantity.FORCE, load()),
            new Input("L", "clear span", Quantity.LENGTH, span.length()),
            new Input("E I", "stiffness", Quantity.STIFFNESS, span.stiffness()),
            new Input("kdef", "creep", Quantity.RATIO, creep.kdef())
        };
    }
}
