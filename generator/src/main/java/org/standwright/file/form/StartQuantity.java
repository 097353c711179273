package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import org.standwright.file.SchemaPlace;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** A quantity to start with, within the schema's limits and round in the file's unit. */
final class StartQuantity {
    private static final JsonNode NOTHING = MissingNode.getInstance();

    private StartQuantity() {}

    static JsonNode of(SchemaPlace place, Units unit) {
        var measure = place.measure(NOTHING).orElseThrow();
        double least = limit(place, "x-min-", measure, 0);
        double most = limit(place, "x-max-", measure, 10 * Math.max(1, least));
        double value = Math.max(least, 0) + (most - Math.max(least, 0)) / 10; // small, but seen
        return JsonNodeFactory.instance.textNode(words(measure, unit, round(value, measure, unit, least, most)));
    }

    private static double limit(SchemaPlace place, String keyword, Measure measure, double otherwise) {
        return place.keyword(keyword + Units.MM.unitOf(measure), NOTHING)
                .map(JsonNode::asDouble)
                .orElse(otherwise);
    }

    /** On the coarsest of a few steps that stays within the limits. */
    private static double round(double value, Measure measure, Units unit, double least, double most) {
        double one = measure.of(1, unit.unitOf(measure));
        for (double step : new double[] {50 * one, 10 * one, one}) {
            double rounded = Math.rint(value / step) * step;
            if (rounded > least && rounded < most) {
                return rounded;
            }
        }
        return value;
    }

    private static String words(Measure measure, Units unit, double value) {
        return switch (measure) {
            case LENGTH -> unit.length(value);
            case MASS -> unit.mass(value);
            case FORCE -> unit.force(value);
        };
    }
}
