package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** What may stand at one place, in words. */
record Expected(String rule, String wayOut) {

    /** Where a value of another type stands. */
    static Expected of(SchemaPlace here, JsonNode value) {
        var bare = here.bare(value);
        if (bare.isPresent()) {
            var expected = of(bare.get().place(), value);
            return new Expected(expected.rule() + " or an object", expected.wayOut());
        }
        var measure = here.word("x-measure", value);
        if (measure.isPresent()) {
            var what = measure.get().equals("money") ? "an amount with its currency" : "a " + measure.get();
            return new Expected("must be " + what, "Write it like " + examples(here, value) + ".");
        }
        if (here.preset(value).isPresent()) {
            return new Expected(
                    "must be a preset's name or an object", "Name one, such as " + examples(here, value) + ".");
        }
        return switch (here.word("type", value).orElse("")) {
            case "object" -> new Expected("must be an object", "Put its fields in braces { }.");
            case "array" -> new Expected("must be a list", "Put its entries in brackets [ ].");
            case "integer" -> new Expected("must be a whole number", "Write it without quotes and decimals.");
            case "number" -> new Expected("must be a plain number", "Write it without quotes and unit.");
            case "boolean" -> new Expected("must be true or false", "Write it without quotes.");
            default -> new Expected("must be text", "Put it in double quotes.");
        };
    }

    /** How to add a field that is missing. */
    static String adding(SchemaPlace missing) {
        var nothing = MissingNode.getInstance();
        var what = missing.word("description", nothing)
                .map(words -> "Add it (" + words + ")")
                .orElse("Add it");
        var examples = examples(missing, nothing);
        return what + (examples.isEmpty() ? "." : ", written like " + examples + ".");
    }

    private static String examples(SchemaPlace here, JsonNode value) {
        var examples = here.keyword("examples", value)
                .or(() -> here.keyword("enum", value))
                .orElse(nothing());
        return StreamSupport.stream(examples.spliterator(), false)
                .map(JsonNode::toString)
                .collect(Collectors.joining(" or "));
    }

    private static JsonNode nothing() {
        return MissingNode.getInstance();
    }
}
