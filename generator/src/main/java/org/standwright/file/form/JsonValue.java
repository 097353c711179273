package org.standwright.file.form;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.JsonTextReader;
import org.standwright.file.text.SourceText;

/** JSON as it is written: 12.50 stays 12.50. */
final class JsonValue {
    private static final ObjectMapper AS_WRITTEN = JsonMapper.builder()
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();

    private JsonValue() {}

    /** @throws DesignFileException when the text is no JSON, is nested too deeply, or names a field twice */
    static JsonNode of(String text) {
        JsonTextReader.read(new SourceText("the design", text));
        try {
            return AS_WRITTEN.readTree(text);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what was read once can be read again", e);
        }
    }

    /** A value as people read it: text without its quotes. */
    static String words(JsonNode value) {
        return value.isTextual() ? value.textValue() : json(value);
    }

    /** On one line, with the spaces that files have. */
    static String json(JsonNode value) {
        if (value.isObject()) {
            var fields = value.properties().stream()
                    .map(field -> quoted(field.getKey()) + ": " + json(field.getValue()))
                    .toList();
            return fields.isEmpty() ? "{}" : "{ " + String.join(", ", fields) + " }";
        }
        if (value.isArray()) {
            var entries = value.valueStream().map(JsonValue::json).toList();
            return "[" + String.join(", ", entries) + "]";
        }
        return value.toString();
    }

    static String quoted(String text) {
        return JsonNodeFactory.instance.textNode(text).toString();
    }
}
