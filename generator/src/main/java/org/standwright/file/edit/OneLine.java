package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** Values on one line, spaced like the rest of a text. */
final class OneLine {
    private final Style style;

    OneLine(Style style) {
        this.style = style;
    }

    String of(JsonNode value) {
        if (value.isObject()) {
            var pad = value.isEmpty() ? "" : style.pad();
            return value.properties().stream()
                    .map(field -> JsonEdit.quoted(field.getKey()) + style.colon() + of(field.getValue()))
                    .collect(Collectors.joining("," + style.gap(), "{" + pad, pad + "}"));
        }
        if (value.isArray()) {
            return StreamSupport.stream(value.spliterator(), false)
                    .map(this::of)
                    .collect(Collectors.joining("," + style.gap(), "[", "]"));
        }
        return value instanceof DecimalNode ? value.decimalValue().toPlainString() : value.toString();
    }
}
