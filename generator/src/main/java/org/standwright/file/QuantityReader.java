package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DoubleNode;
import org.standwright.file.text.Problems;
import org.standwright.unit.Measure;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;

/** Turns one quantity of a file into a number in mm, kg or N, and holds it against the schema's range. */
final class QuantityReader {
    private static final double SLACK = 1e-9;

    private final Problems problems;

    QuantityReader(Problems problems) {
        this.problems = problems;
    }

    JsonNode read(JsonNode value, SchemaPlace here, Measure measure, String at, Units unit) {
        var symbol = unit.unitOf(measure);
        if (value.isNumber()) {
            double number = measure.of(value.doubleValue(), symbol);
            return inRange(number, here, measure, at, value + " " + symbol, unit);
        }
        if (!value.isTextual()) {
            return value;
        }
        try {
            double number = measure.parse(value.textValue(), symbol);
            return inRange(number, here, measure, at, Problems.shown(value), unit);
        } catch (QuantityException e) {
            problems.value(at, value, e.rule(), e.wayOut());
            return value;
        }
    }

    private JsonNode inRange(double number, SchemaPlace here, Measure measure, String at, String shown, Units unit) {
        var base = switch (measure) {
            case LENGTH -> "mm";
            case MASS -> "kg";
            case FORCE -> "N";
        };
        double least = bound("x-min-" + base, here, Double.NEGATIVE_INFINITY);
        double most = bound("x-max-" + base, here, Double.POSITIVE_INFINITY);
        if (number < least - SLACK || number > most + SLACK) {
            var from = rounded(least, measure, unit, true);
            var to = rounded(most, measure, unit, false);
            problems.value(
                    at, shown, "must be " + from + " to " + to, "The nearest is " + (number < least ? from : to) + ".");
        }
        return DoubleNode.valueOf(number + 0.0); // no negative zero
    }

    private static double bound(String keyword, SchemaPlace here, double none) {
        return here.place().path(keyword).asDouble(none);
    }

    /** A bound as the maker reads it, rounded into the range. */
    private static String rounded(double bound, Measure measure, Units unit, boolean up) {
        double step = step(measure, unit);
        double steps = bound / step;
        double inside = step * (up ? Math.ceil(steps - SLACK) : Math.floor(steps + SLACK));
        return switch (measure) {
            case LENGTH -> unit.length(inside);
            case MASS -> unit.mass(inside);
            case FORCE -> unit.force(inside);
        };
    }

    private static double step(Measure measure, Units unit) {
        boolean fractions = measure == Measure.LENGTH && unit != Units.MM;
        return measure.of(fractions ? 1.0 / 32 : 0.1, unit.unitOf(measure));
    }
}
