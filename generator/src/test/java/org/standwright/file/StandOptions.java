package org.standwright.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Every choice that the schema leaves to the maker of a stand: fields that may be left out, words of a list, members of
 * a family. A choice is named by the part of the schema that it belongs to, so that one inside a bay within a bay is the
 * same choice. A choice that is left out is used as the schema's default says.
 */
final class StandOptions {
    private static final Set<String> ON_EVERY_OBJECT = Set.of("note", "name", "unit", "preset", "kind", "version");

    private final JsonNode schema = DesignSchema.published().root().place();
    private final Set<String> seen = new TreeSet<>();
    private final Set<String> options = new LinkedHashSet<>();

    /** All of them, in the schema's order. */
    static Set<String> all() {
        var options = new StandOptions();
        options.collect(options.schema.at("/$defs/stand"), "stand");
        return options.options;
    }

    /** Those that one design makes use of. */
    static Set<String> usedBy(JsonNode design) {
        var options = new StandOptions();
        options.use(options.schema.at("/$defs/stand"), design, "stand");
        return options.options;
    }

    private void collect(JsonNode place, String owner) {
        if (place.has("x-preset") && !place.has("allOf") || isRuleName(place)) {
            return; // what a preset holds is no choice of the stand, nor is which rule to be strict about
        }
        if (place.has("$ref")) {
            var name = name(place);
            if (!isQuantity(place) && seen.add(name)) {
                collect(target(place), ownName(name, owner));
            }
        }
        place.path("enum").forEach(word -> options.add(owner + " = " + word.asText()));
        place.path("properties").properties().forEach(field -> {
            if (!ON_EVERY_OBJECT.contains(field.getKey())) {
                var path = owner + " / " + field.getKey();
                if (!isRequired(place, field.getKey())) {
                    options.add(path);
                }
                collect(field.getValue(), path);
            }
        });
        if (place.has("items")) {
            collect(place.get("items"), owner);
        }
        place.path("allOf").forEach(member -> collectMember(member, owner));
        if (place.has("then")) {
            collect(place.get("then"), owner);
        }
    }

    private static boolean isRuleName(JsonNode place) {
        return place.path("$ref").asText().endsWith("/rule-name");
    }

    private void collectMember(JsonNode member, String owner) {
        var kind = member.at("/if/properties/kind/const").asText();
        options.add(owner + " = " + kind);
        collect(member.path("then"), owner + " " + kind);
    }

    private void use(JsonNode place, JsonNode value, String owner) {
        if (place.has("x-preset") && !place.has("allOf") || isRuleName(place)) {
            return;
        }
        if (place.has("$ref") && !isQuantity(place)) {
            use(target(place), value, ownName(name(place), owner));
        }
        place.path("enum").forEach(word -> {
            if (word.asText().equals(value.asText())) {
                options.add(owner + " = " + word.asText());
            }
        });
        if (place.has("x-bare") && !value.isObject()) {
            var bare = place.get("x-bare");
            options.add(
                    bare.has("kind")
                            ? owner + " = " + bare.get("kind").asText()
                            : owner + " / " + bare.get("field").asText());
        }
        place.path("properties").properties().forEach(field -> {
            if (!ON_EVERY_OBJECT.contains(field.getKey())) {
                useField(place, field, value, owner);
            }
        });
        if (place.has("items")) {
            value.forEach(entry -> use(place.get("items"), entry, owner));
        }
        for (var member : place.path("allOf")) {
            var kind = member.at("/if/properties/kind/const").asText();
            if (kind.equals(value.path("kind").asText())) {
                options.add(owner + " = " + kind);
                use(member.path("then"), value, owner + " " + kind);
            }
        }
        if (place.has("then") && value.isObject()) {
            use(place.get("then"), value, owner);
        }
    }

    private void useField(JsonNode place, Map.Entry<String, JsonNode> field, JsonNode value, String owner) {
        var path = owner + " / " + field.getKey();
        if (value.has(field.getKey())) {
            if (!isRequired(place, field.getKey())) {
                options.add(path);
            }
            use(field.getValue(), value.get(field.getKey()), path);
        } else if (field.getValue().has("default")) {
            use(field.getValue(), field.getValue().get("default"), path);
        }
    }

    private boolean isQuantity(JsonNode place) {
        return target(place).has("x-measure") || name(place).startsWith("given-");
    }

    private JsonNode target(JsonNode place) {
        return schema.at(place.get("$ref").asText().substring(1));
    }

    private static String name(JsonNode place) {
        var ref = place.get("$ref").asText();
        return ref.substring(ref.lastIndexOf('/') + 1);
    }

    /** A place that is described once and used in several is called by that description's name. */
    private static String ownName(String name, String owner) {
        return Set.of("bay", "content", "shelves").contains(name) ? name : owner;
    }

    private static boolean isRequired(JsonNode place, String field) {
        for (var required : place.path("required")) {
            if (required.asText().equals(field)) {
                return true;
            }
        }
        return false;
    }
}
