package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.file.SchemaPlace;
import org.standwright.unit.Units;

/** Gives plain numbers that are quantities the unit of their own file, so that they mean the same in another. */
final class PlainNumbers {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private PlainNumbers() {}

    /** A copy of a whole file. */
    static ObjectNode withUnits(ObjectNode file, SchemaPlace place) {
        return object(file, place, Units.MM);
    }

    private static JsonNode copy(JsonNode value, SchemaPlace place, Units unit) {
        if (value.isObject()) {
            return object(value, place, unit);
        }
        if (value.isArray()) {
            var list = NODES.arrayNode();
            value.forEach(entry -> list.add(
                    place.items(value).map(items -> copy(entry, items, unit)).orElse(entry)));
            return list;
        }
        var measure = place.bare(value).map(bare -> bare.place()).orElse(place).measure(value);
        return value.isNumber() && measure.isPresent()
                ? NODES.textNode(value.asText() + " " + unit.unitOf(measure.get()))
                : value;
    }

    private static ObjectNode object(JsonNode value, SchemaPlace place, Units inherited) {
        var unit = Units.named(value.path("unit").asText()).orElse(inherited);
        var fields = place.fields(value);
        var copy = NODES.objectNode();
        value.properties().forEach(field -> {
            var inside = fields.get(field.getKey());
            copy.set(field.getKey(), inside == null ? field.getValue() : copy(field.getValue(), inside, unit));
        });
        return copy;
    }
}
