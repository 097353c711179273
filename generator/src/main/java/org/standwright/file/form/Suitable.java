package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import org.standwright.file.SchemaPlace;

/** Whether a value can stay when the object around it becomes another member of its family. */
final class Suitable {
    private Suitable() {}

    static boolean is(JsonNode value, SchemaPlace place) {
        return Input.of(place, value) != Input.RAW
                && place.keyword("enum", value)
                        .map(choices -> choices.valueStream().anyMatch(value::equals))
                        .orElse(true);
    }
}
