package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.file.SchemaPlace;
import org.standwright.unit.Units;

/** What is written first where something is added: the schema's own default or example, or what its limits allow. */
final class StartValue {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonNode NOTHING = MissingNode.getInstance();

    private final Units unit;
    private final Presets presets;

    private StartValue(Units unit, Presets presets) {
        this.unit = unit;
        this.presets = presets;
    }

    static JsonNode of(Row row) {
        var standard = row.field().standard();
        return standard.isMissingNode()
                ? new StartValue(row.unit(), row.presets())
                        .value(row.name(), row.field().place())
                : standard;
    }

    /** An entry that a list does not have yet. */
    static JsonNode entry(Row list, Optional<JsonNode> member) {
        var items = list.field().place().items(NOTHING).orElseThrow();
        var start = new StartValue(list.unit(), list.presets());
        if (member.isEmpty()) {
            return start.value(list.oneOf(), items);
        }
        var object = NODES.objectNode();
        object.set(items.chooser(NOTHING).orElseThrow(), member.get());
        start.require(object, items);
        return object;
    }

    static List<Choice> members(Row list) {
        var items = list.field().place().items(NOTHING).orElseThrow();
        var choices = new ArrayList<Choice>();
        items.chooser(NOTHING)
                .flatMap(chooser -> items.fields(NOTHING).get(chooser).keyword("enum", NOTHING))
                .ifPresent(values ->
                        values.forEach(value -> choices.add(new Choice(Label.of(value.asText()), value.toString()))));
        return choices;
    }

    /** Adds what an object of a family's member must have and has not. */
    static void addRequired(ObjectNode object, SchemaPlace place, Units unit, Presets presets) {
        new StartValue(unit, presets).require(object, place);
    }

    private void require(ObjectNode object, SchemaPlace place) {
        boolean grew = true;
        while (grew) { // a kind that is chosen brings fields of its own
            grew = false;
            var fields = place.fields(object);
            for (var name : place.required(object)) {
                if (!object.has(name) && fields.containsKey(name)) {
                    object.set(name, value(name.equals("name") ? word(object) : name, fields.get(name)));
                    grew = true;
                }
            }
        }
    }

    /** What a thing without a name is called at first: what it is. */
    private static String word(ObjectNode object) {
        return object.has("kind") ? "new " + object.get("kind").asText() : "new";
    }

    private JsonNode value(String name, SchemaPlace place) {
        var given = place.keyword("default", NOTHING).filter(value -> !value.isContainerNode());
        if (given.isPresent()) {
            return given.get();
        }
        return switch (Input.of(place, NOTHING)) {
            case LENGTH, MASS, FORCE -> StartQuantity.of(place, unit);
            case GROUP -> group(name, place);
            case LIST -> list(name, place);
            case PRESET, PRESET_NAME -> preset(place);
            case CHOICE -> place.keyword("enum", NOTHING).orElseThrow().get(0);
            case TRUTH -> NODES.booleanNode(true);
            case WHOLE, NUMBER -> place.keyword("minimum", NOTHING).orElse(NODES.numberNode(1));
            case MONEY, TEXT, RAW -> example(place).orElse(NODES.textNode(name));
        };
    }

    private JsonNode preset(SchemaPlace place) {
        var names = place.preset(NOTHING).map(presets::names).orElse(List.of());
        return example(place)
                .or(() -> names.stream().findFirst().map(NODES::textNode))
                .orElse(NODES.textNode(""));
    }

    private JsonNode group(String name, SchemaPlace place) {
        var bare = place.bare(NOTHING);
        if (bare.isPresent()) {
            return value(name, bare.get().place());
        }
        var object = NODES.objectNode();
        require(object, place);
        return object;
    }

    private JsonNode list(String name, SchemaPlace place) {
        var list = NODES.arrayNode();
        int fewest = place.keyword("minItems", NOTHING).map(JsonNode::asInt).orElse(0);
        place.items(NOTHING).ifPresent(items -> {
            while (list.size() < fewest) {
                list.add(value(Label.one(name), items));
            }
        });
        return list;
    }

    private static Optional<JsonNode> example(SchemaPlace place) {
        return place.keyword("examples", NOTHING)
                .filter(examples -> !examples.isEmpty())
                .map(examples -> examples.get(0));
    }
}
