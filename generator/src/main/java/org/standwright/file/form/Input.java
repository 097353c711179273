package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import org.standwright.file.SchemaPlace;

/** What is typed or chosen in a row. */
public enum Input {
    LENGTH,
    MASS,
    FORCE,
    MONEY,
    /** A number of things. */
    WHOLE,
    NUMBER,
    /** Yes or no. */
    TRUTH,
    TEXT,
    /** One of a few values. */
    CHOICE,
    /** A preset's name. */
    PRESET_NAME,
    /** A preset's name, or an object of the preset's fields. */
    PRESET,
    /** An object: its fields are the rows inside. */
    GROUP,
    /** A list: its entries are the rows inside. */
    LIST,
    /** What the form does not know how to ask for: JSON as it stands. */
    RAW;

    /** Whether rows are inside. */
    public boolean holdsRows() {
        return this == GROUP || this == LIST || this == PRESET;
    }

    /** Whether a number with a unit is typed. */
    public boolean isQuantity() {
        return this == LENGTH || this == MASS || this == FORCE;
    }

    /** What the schema asks for at one place where {@code value} stands; RAW when the value is of another make. */
    static Input of(SchemaPlace place, JsonNode value) {
        var asked = asked(place, value);
        return value.isMissingNode() || asked.takes(place, value) ? asked : RAW;
    }

    private static Input asked(SchemaPlace place, JsonNode value) {
        var types = types(place, value);
        if (place.keyword("x-bare", value).isPresent()) {
            return GROUP;
        }
        if (place.preset(value).isPresent() && types.contains("string")) {
            return types.contains("object") ? PRESET : PRESET_NAME;
        }
        if (place.keyword("x-measure", value).isPresent()) {
            return place.measure(value).map(Enum::name).map(Input::valueOf).orElse(MONEY);
        }
        if (place.keyword("enum", value).isPresent()) {
            return CHOICE;
        }
        return types.stream().findFirst().map(Input::named).orElse(RAW);
    }

    private static List<String> types(SchemaPlace place, JsonNode value) {
        var types = new ArrayList<String>();
        place.keyword("type", value).ifPresent(type -> {
            if (type.isTextual()) {
                types.add(type.asText());
            }
            type.forEach(each -> types.add(each.asText()));
        });
        return types;
    }

    private static Input named(String type) {
        return switch (type) {
            case "object" -> GROUP;
            case "array" -> LIST;
            case "integer" -> WHOLE;
            case "number" -> NUMBER;
            case "boolean" -> TRUTH;
            default -> TEXT;
        };
    }

    private boolean takes(SchemaPlace place, JsonNode value) {
        return switch (this) {
            case GROUP ->
                value.isObject() || value.isValueNode() && place.bare(value).isPresent();
            case PRESET -> value.isObject() || value.isTextual();
            case LIST -> value.isArray();
            case TRUTH -> value.isBoolean();
            default -> value.isTextual() || value.isNumber();
        };
    }
}
