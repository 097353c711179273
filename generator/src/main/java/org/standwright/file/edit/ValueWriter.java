package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.file.FileKind;
import org.standwright.file.Filled;
import org.standwright.file.PresetLibrary;
import org.standwright.file.SchemaPlace;
import org.standwright.unit.Units;

/** Writes a part of a design as a maker would: with units, presets by name, without what is so by default. */
final class ValueWriter {
    private static final JsonNode NOTHING = MissingNode.getInstance();
    private static final JsonNode TEXT = TextNode.valueOf("");

    private final PresetLibrary library;
    private final NamedPresets presets;

    ValueWriter(PresetLibrary library, NamedPresets presets) {
        this.library = library;
        this.presets = presets;
    }

    /**
     * What a file says that means {@code tree}.
     *
     * @param tree in mm, kg and N
     * @param here what the schema says about its place
     */
    JsonNode write(JsonNode tree, SchemaPlace here, Units unit) {
        var measure = here.measure(tree);
        if (measure.isPresent() && tree.isNumber()) {
            return QuantityText.of(tree.doubleValue(), measure.get(), unit);
        }
        if (tree.isNumber()) {
            return DecimalNode.valueOf(new BigDecimal(QuantityText.plain(tree.decimalValue())));
        }
        var bare = bare(tree, here, unit);
        if (bare.isPresent()) {
            return bare.get();
        }
        if (tree.isObject()) {
            return named(tree, here).orElseGet(() -> fewest(tree, Optional.empty(), here, unit));
        }
        return tree.isArray() ? list(tree, here, unit) : tree;
    }

    /** A preset by its name: as a text where the schema allows that, else as an object that names it. */
    private Optional<JsonNode> named(JsonNode tree, SchemaPlace here) {
        return here.preset(tree)
                .flatMap(kind -> presets.name(kind, tree))
                .map(name -> here.preset(TEXT).isPresent() ? TextNode.valueOf(name) : naming(tree, name));
    }

    /**
     * All fields, or fewer beside the name of a preset that it is much like.
     *
     * @param first preset to name where others are no more like it
     */
    JsonNode fewest(JsonNode tree, Optional<String> first, SchemaPlace here, Units unit) {
        if (here.preset(tree).filter(FileKind::isDesign).isPresent()) {
            throw new JsonEditException(
                    "The change cannot be written: of a stand before a wall a file says no more than"
                            + " the name of its design. Change that in the text.");
        }
        var all = object(tree, here, unit);
        return here.preset(tree).stream()
                .flatMap(kind -> Stream.concat(first.stream(), presets.names(kind))
                        .flatMap(name -> differing(tree, name, kind, here, unit).stream()))
                .min(Comparator.comparingInt(ObjectNode::size))
                .filter(few -> few.size() <= all.size() / 2)
                .orElse(all);
    }

    /** A preset and the fields in which this differs from it; empty where it lacks one that the preset has. */
    private Optional<ObjectNode> differing(JsonNode tree, String preset, FileKind kind, SchemaPlace here, Units unit) {
        return presets.tree(kind, preset)
                .filter(base -> NamedPresets.isLike(base, tree))
                .map(base -> {
                    var given = naming(tree, preset);
                    if (kind == FileKind.HINGE) {
                        given.set("style", tree.get("style")); // chooses the member whose fields are replaced
                    }
                    here.fields(tree).forEach((name, place) -> {
                        if (tree.has(name) && !SameTree.is(base.path(name), tree.get(name))) {
                            given.set(name, write(tree.get(name), place, unit));
                        }
                    });
                    return given;
                });
    }

    /** Whether a field may be left out because it is so by default. */
    private boolean isDefault(JsonNode tree, SchemaPlace here, Units unit) {
        return here.keyword("default", NOTHING)
                .map(given -> Filled.of(given, here, unit, library))
                .filter(filled -> SameTree.is(filled, tree))
                .isPresent();
    }

    /** A family's usual member as no more than its one value. */
    private Optional<JsonNode> bare(JsonNode tree, SchemaPlace here, Units unit) {
        return here.bare(NOTHING).filter(bare -> tree.isObject()).flatMap(bare -> {
            var alone = bare.member().deepCopy();
            alone.set(bare.field(), tree.path(bare.field()));
            return alone.equals(tree)
                    ? Optional.of(write(tree.get(bare.field()), bare.place(), unit))
                    : Optional.empty();
        });
    }

    /** As an object, without what is so by default. */
    ObjectNode object(JsonNode tree, SchemaPlace here, Units unit) {
        var written = JsonNodeFactory.instance.objectNode();
        var fields = here.fields(tree);
        tree.fieldNames().forEachRemaining(name -> requireField(fields, name));
        fields.forEach((name, place) -> {
            if (tree.has(name) && !isDefault(tree.get(name), place, unit)) {
                written.set(name, write(tree.get(name), place, unit));
            }
        });
        return written;
    }

    private static void requireField(Map<String, SchemaPlace> fields, String name) {
        if (!fields.containsKey(name)) {
            throw new JsonEditException("The change cannot be written: a design file has no field \"" + name + "\".");
        }
    }

    private JsonNode list(JsonNode tree, SchemaPlace here, Units unit) {
        var written = JsonNodeFactory.instance.arrayNode();
        here.items(tree).ifPresent(items -> tree.forEach(entry -> written.add(write(entry, items, unit))));
        return written;
    }

    /** An object that names a preset and says no more. */
    static ObjectNode naming(JsonNode tree, String preset) {
        var object = JsonNodeFactory.instance.objectNode();
        if (tree.has("kind")) {
            object.set("kind", tree.get("kind"));
        }
        return object.put("preset", preset);
    }
}
