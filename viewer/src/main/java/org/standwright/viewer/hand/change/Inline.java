package org.standwright.viewer.hand.change;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.standwright.file.edit.JsonEdit;

/** JSON on one line, spaced as the presets are. */
public final class Inline {
    private Inline() {}

    public static String of(JsonNode value) {
        if (value.isObject()) {
            return value.isEmpty()
                    ? "{}"
                    : value.properties().stream()
                            .map(field -> JsonEdit.quoted(field.getKey()) + ": " + of(field.getValue()))
                            .collect(Collectors.joining(", ", "{ ", " }"));
        }
        if (value.isArray()) {
            return StreamSupport.stream(value.spliterator(), false)
                    .map(Inline::of)
                    .collect(Collectors.joining(", ", "[", "]"));
        }
        return value.toString();
    }
}
