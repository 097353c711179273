package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.Pointer;
import org.standwright.file.text.Problems;
import org.standwright.unit.Money;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;

/**
 * Walks a file beside its schema and copies it as the records need it: quantities as numbers in mm, kg and N, defaults
 * filled in, presets in the place of their names. What has the wrong type is copied as it is; the schema's validator has
 * told it already.
 */
final class Walk {
    /** Chooses the member of a family whose presets have one kind. */
    private static final String STYLE = "style";

    private static final JsonNode NOTHING = MissingNode.getInstance();

    private final PresetLibrary presets;
    private final Problems problems;
    private final QuantityReader quantities;

    Walk(PresetLibrary presets, Problems problems) {
        this.presets = presets;
        this.problems = problems;
        this.quantities = new QuantityReader(problems);
    }

    JsonNode copy(JsonNode value, SchemaPlace here, String at, Units unit) {
        var bare = here.bare(value);
        if (bare.isPresent()) {
            return whole(value, bare.get(), here, at, unit);
        }
        var measure = here.measure(value);
        if (measure.isPresent()) {
            return quantities.read(value, here, measure.get(), at, unit);
        }
        if (here.word("x-measure", value).isPresent()) {
            return money(value, at);
        }
        var preset = here.preset(value);
        if (preset.isPresent() && value.isTextual()) {
            return named(preset.get(), value, at);
        }
        if (value.isObject()) {
            return preset.isPresent() && value.has("preset")
                    ? replaced(preset.get(), value, here, at, unit)
                    : object(value, here, at, unit, true);
        }
        return value.isArray() ? list(value, here, at, unit) : value;
    }

    /** The object that a bare value stands for; the value keeps its own place in the file. */
    private JsonNode whole(JsonNode value, BareValue bare, SchemaPlace here, String at, Units unit) {
        var copy = object(bare.member(), here, at, unit, true);
        copy.set(bare.field(), copy(value, bare.place(), at, unit));
        return copy;
    }

    private JsonNode money(JsonNode value, String at) {
        try {
            if (value.isTextual()) {
                Money.parse(value.textValue());
            }
        } catch (QuantityException e) {
            problems.value(at, value, e.rule(), e.wayOut());
        }
        return value;
    }

    private ObjectNode object(JsonNode value, SchemaPlace here, String at, Units inherited, boolean withDefaults) {
        var unit = Units.named(value.path("unit").asText()).orElse(inherited);
        var copy = JsonNodeFactory.instance.objectNode();
        here.fields(value).forEach((name, field) -> {
            var standard = withDefaults ? field.keyword("default", NOTHING) : Optional.<JsonNode>empty();
            Optional.ofNullable(value.get(name))
                    .or(() -> standard)
                    .ifPresent(given -> copy.set(name, copy(given, field, Pointer.child(at, name), unit)));
        });
        return copy;
    }

    private JsonNode list(JsonNode value, SchemaPlace here, String at, Units unit) {
        var copy = JsonNodeFactory.instance.arrayNode();
        here.items(value).ifPresent(items -> {
            for (var entry : value) {
                copy.add(copy(entry, items, Pointer.child(at, copy.size()), unit));
            }
        });
        return copy;
    }

    /** A preset whose fields are replaced by those given beside its name. */
    private JsonNode replaced(FileKind kind, JsonNode value, SchemaPlace here, String at, Units unit) {
        var preset = named(kind, value.get("preset"), Pointer.child(at, "preset"));
        var given = object(value, here, at, unit, false);
        if (!(preset instanceof ObjectNode fields)) {
            return given;
        }
        if (given.has(STYLE) && !given.get(STYLE).equals(fields.path(STYLE))) {
            problems.value(
                    Pointer.child(at, STYLE),
                    given.get(STYLE),
                    "must be " + fields.path(STYLE) + ", as in the preset",
                    "Name a preset of this style.");
        }
        return fields.setAll(given);
    }

    private JsonNode named(FileKind kind, JsonNode name, String at) {
        var preset = presets.find(kind, name.asText());
        if (preset.isEmpty()) {
            problems.value(
                    at, name, "must be the name of " + kind.oneOf() + " preset", presets.hint(kind, name.asText()));
            return name;
        }
        try {
            return presets.read(preset.get()).values().deepCopy();
        } catch (DesignFileException e) {
            problems.addAll(e.problems());
            return name;
        }
    }
}
