package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.ValidationMessage;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.StreamSupport;
import org.standwright.file.text.JsonText;
import org.standwright.file.text.NearestName;
import org.standwright.file.text.Pointer;
import org.standwright.file.text.Problems;

/** Says what the schema's validator found in the words of the file's writer. */
final class PlainMessages {
    /** The schema's pattern for names that stand on terminals, paper and files. */
    private static final String PRINTABLE = "^(?=.*\\S)[^\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]*$";

    private static final String REASON = "^(?=(\\s*\\S){10})[^\\p{Cc}\\p{Cf}\\p{Cs}\\p{Zl}\\p{Zp}]*$";

    private static final String COLOUR = "^#[0-9A-Fa-f]{6}$";

    private final SchemaPlace schema;
    private final JsonText json;
    private final Problems problems;

    PlainMessages(SchemaPlace schema, JsonText json, Problems problems) {
        this.schema = schema;
        this.json = json;
        this.problems = problems;
    }

    void add(Collection<ValidationMessage> messages) {
        // unknown fields first: a misspelt field explains why the right one is missing
        messages.stream().filter(PlainMessages::isUnknownField).forEach(this::addUnknown);
        messages.stream().filter(message -> !isUnknownField(message)).forEach(this::add);
    }

    private static boolean isUnknownField(ValidationMessage message) {
        return message.getType().equals("additionalProperties")
                || message.getType().equals("unevaluatedProperties");
    }

    private void addUnknown(ValidationMessage message) {
        var object = message.getInstanceNode();
        var place = place(message);
        var known = place.fields(object).keySet();
        var name = message.getProperty();
        boolean lost = place.lacksMember(object) && NearestName.to(name, known).isEmpty();
        if (lost || known.contains(name)) {
            return; // the kind is missing, or only the field's value is wrong: told elsewhere
        }
        var at = Pointer.child(pointer(message), name);
        var free = known.stream()
                .filter(field -> !object.has(field) && !field.equals("$schema"))
                .toList();
        var hint = free.isEmpty() ? "Leave it out." : NearestName.hint(name, free);
        problems.key(at, json.positions().key(at), "no such field here", hint);
    }

    private void add(ValidationMessage message) {
        var at = pointer(message);
        var value = message.getInstanceNode();
        var limit = message.getSchemaNode();
        switch (message.getType()) {
            case "required" -> addMissing(message);
            case "type" -> addOtherType(at, value, Expected.of(place(message), value));
            case "enum" -> addOther(at, value, limit);
            case "minimum", "maximum" ->
                problems.value(at, value, range(place(message), value), "The nearest is " + limit.asText() + ".");
            case "minItems" ->
                problems.value(at, value, "must hold at least " + limit.asText(), "Add one in the brackets [ ].");
            case "maxItems" ->
                problems.value(
                        at, "a list of " + value.size(), "must hold at most " + limit.asText(), "Leave some out.");
            case "maxLength" ->
                problems.value(
                        at,
                        value,
                        "must be at most " + limit.asText() + " characters long",
                        "Put the rest into a \"note\".");
            case "minLength" ->
                problems.value(
                        at,
                        value,
                        "must be at least " + limit.asText() + " characters long",
                        "Say more, or leave it out.");
            case "pattern" -> addPattern(at, value, limit.asText());
            default -> throw new IllegalStateException("no words for the schema's rule " + message.getType());
        }
    }

    private void addMissing(ValidationMessage message) {
        var object = message.getInstanceNode();
        var name = message.getProperty();
        var fields = place(message).fields(object);
        boolean misspelt = unknownNames(object, fields).stream()
                .anyMatch(given -> NearestName.to(given, fields.keySet())
                        .filter(name::equals)
                        .isPresent());
        if (!misspelt) {
            var at = pointer(message);
            problems.key(
                    Pointer.child(at, name), json.positions().key(at), "missing", Expected.adding(fields.get(name)));
        }
    }

    private void addOtherType(String at, JsonNode value, Expected expected) {
        problems.value(at, value, expected.rule(), expected.wayOut());
    }

    private static List<String> unknownNames(JsonNode object, Map<String, SchemaPlace> fields) {
        var names = new ArrayList<String>();
        object.fieldNames().forEachRemaining(names::add);
        names.removeAll(fields.keySet());
        return names;
    }

    private void addOther(String at, JsonNode value, JsonNode allowed) {
        if (allowed.path(0).isNumber()) {
            problems.value(
                    at,
                    value,
                    "must be one of the numbers " + String.join(", ", words(allowed)),
                    value.isTextual() ? "Write it without quotes." : "");
        } else {
            var words = words(allowed);
            problems.value(at, value, "must be " + NearestName.either(words), NearestName.guess(value.asText(), words));
        }
    }

    private void addPattern(String at, JsonNode value, String pattern) {
        if (pattern.equals(PRINTABLE)) {
            addUnprintable(at, value);
        } else if (pattern.equals(COLOUR)) {
            problems.value(
                    at,
                    value,
                    "must be # and six hexadecimal digits, two each for red, green and blue",
                    "Write it like #d9b982.");
        } else if (pattern.equals(REASON)) {
            problems.value(at, value, "must say in words on one line why", "The packet prints it.");
        } else {
            problems.value(
                    at, value, "must be a plain name", "Use letters, digits, dots and dashes, without any folder.");
        }
    }

    private void addUnprintable(String at, JsonNode value) {
        if (value.asText().isBlank()) {
            problems.value(at, value, "must hold a word", "Name it so that it can be found again.");
        } else {
            problems.value(
                    at,
                    value,
                    "must hold no line break, control character or mark of writing direction",
                    "Type it anew in plain letters.");
        }
    }

    private static String range(SchemaPlace place, JsonNode value) {
        return "must be " + place.word("minimum", value).orElseThrow() + " to "
                + place.word("maximum", value).orElseThrow();
    }

    private static List<String> words(JsonNode allowed) {
        return StreamSupport.stream(allowed.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }

    private SchemaPlace place(ValidationMessage message) {
        return schema.inside(json.root(), pointer(message));
    }

    private static String pointer(ValidationMessage message) {
        return message.getInstanceLocation().toString();
    }
}
