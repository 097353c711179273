package org.standwright.file;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.standwright.unit.Measure;

/**
 * One place of the schema, asked about one value: what stands behind its references and conditions is part of it.
 *
 * @param schema the whole schema
 * @param place the part of it that describes the value
 */
public record SchemaPlace(JsonNode schema, JsonNode place) {

    /** The place that describes a whole file. */
    public static SchemaPlace ofFile() {
        return DesignSchema.published().root();
    }

    /** What this place, which describes {@code file}, says about the value that {@code pointer} leads to. */
    SchemaPlace inside(JsonNode file, String pointer) {
        var here = this;
        var value = file;
        for (var step = JsonPointer.compile(pointer); !step.matches(); step = step.tail()) {
            here = value.isArray()
                    ? here.items(value).orElseThrow()
                    : here.fields(value).get(step.getMatchingProperty());
            value = value.isArray() ? value.get(step.getMatchingIndex()) : value.get(step.getMatchingProperty());
        }
        return here;
    }

    /** What the nearest of this place's parts says under {@code name}. */
    public Optional<JsonNode> keyword(String name, JsonNode value) {
        return parts(value).stream().filter(part -> part.has(name)).findFirst().map(part -> part.get(name));
    }

    public Optional<String> word(String name, JsonNode value) {
        return keyword(name, value).map(JsonNode::asText);
    }

    /** The fields that an object may have here, in the schema's order. */
    public Map<String, SchemaPlace> fields(JsonNode value) {
        var fields = new LinkedHashMap<String, SchemaPlace>();
        for (var part : parts(value)) {
            part.path("properties")
                    .properties()
                    .forEach(field -> fields.putIfAbsent(field.getKey(), new SchemaPlace(schema, field.getValue())));
        }
        return fields;
    }

    /** Names of the fields that an object here must have. */
    public Set<String> required(JsonNode value) {
        var names = new LinkedHashSet<String>();
        parts(value).forEach(part -> part.path("required").forEach(name -> names.add(name.asText())));
        return names;
    }

    /** The field that chooses the member, where this is a family: "kind", say. */
    public Optional<String> chooser(JsonNode value) {
        return parts(value).stream()
                .flatMap(part -> StreamSupport.stream(part.path("allOf").spliterator(), false))
                .flatMap(member -> member.path("if").path("properties").properties().stream())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** What an entry of a list here looks like. */
    public Optional<SchemaPlace> items(JsonNode value) {
        return keyword("items", value).map(items -> new SchemaPlace(schema, items));
    }

    /** The kind of quantity that stands here. */
    public Optional<Measure> measure(JsonNode value) {
        return word("x-measure", value)
                .flatMap(word -> Arrays.stream(Measure.values())
                        .filter(measure -> measure.word().equals(word))
                        .findFirst());
    }

    /** What a value means that is no object, where one of a family may stand. */
    public Optional<BareValue> bare(JsonNode value) {
        return value.isObject() ? Optional.empty() : keyword("x-bare", value).map(bare -> BareValue.of(this, bare));
    }

    /** The kind of preset that may be named here. */
    public Optional<FileKind> preset(JsonNode value) {
        return word("x-preset", value).flatMap(FileKind::of);
    }

    /** Whether this is a family whose member is chosen by "kind", and {@code value} chooses none of them. */
    boolean lacksMember(JsonNode value) {
        return parts(value).stream()
                .filter(part -> part.has("allOf"))
                .anyMatch(part -> StreamSupport.stream(part.get("allOf").spliterator(), false)
                        .noneMatch(member -> holds(member.get("if"), value)));
    }

    private List<JsonNode> parts(JsonNode value) {
        var parts = new ArrayList<JsonNode>();
        collect(place, value, parts);
        return parts;
    }

    private void collect(JsonNode part, JsonNode value, List<JsonNode> parts) {
        parts.add(part);
        if (part.has("$ref")) {
            collect(schema.at(part.get("$ref").asText().substring(1)), value, parts);
        }
        part.path("allOf").forEach(member -> collect(member, value, parts));
        if (part.has("if")) {
            var branch = part.path(holds(part.get("if"), value) ? "then" : "else");
            if (!branch.isMissingNode()) {
                collect(branch, value, parts);
            }
        }
    }

    /** The conditions that the schema uses: a text, an object, a field that is given, a field of one value. */
    private static boolean holds(JsonNode condition, JsonNode value) {
        boolean holds = switch (condition.path("type").asText()) {
            case "string" -> value.isTextual();
            case "object" -> value.isObject();
            default -> true;
        };
        for (var name : condition.path("required")) {
            holds &= value.has(name.asText());
        }
        for (var field : condition.path("properties").properties()) {
            holds &= field.getValue().get("const").equals(value.get(field.getKey()));
        }
        return holds;
    }
}
