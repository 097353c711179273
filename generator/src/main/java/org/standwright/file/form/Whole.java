package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.standwright.file.BareValue;
import org.standwright.file.FileKind;
import org.standwright.file.SchemaPlace;

/**
 * A value as the object that it stands for: a bare value as the object of one field, a preset's name as the object that
 * names it. Beside what is written stands what holds without it: the preset's fields, the member of a family.
 *
 * @param written the fields that are written, or would be if the value were an object
 * @param behind the fields that hold where they are not written
 * @param all everything that holds, written or not
 * @param inner the field that a value that is no object is; empty where it is an object
 * @param chooser the field that chooses the member of a family, such as "kind"
 */
record Whole(ObjectNode written, ObjectNode behind, ObjectNode all, Optional<String> inner, Optional<String> chooser) {
    static final String PRESET = "preset";

    static Whole of(Field field, Presets presets) {
        var value = field.value();
        var bare =
                value.isMissingNode() ? bareless(field.place()) : field.place().bare(value);
        if (bare.isPresent()) {
            return bare(field.place(), bare.get(), value);
        }
        if (value.isObject()) {
            return field.isGiven()
                    ? object(field.place(), (ObjectNode) value, presets)
                    : unwritten(field.place(), value);
        }
        return Input.of(field.place(), value) == Input.PRESET
                ? named(field.place(), value, presets)
                : of(field.place(), empty(), empty(), Optional.empty());
    }

    private static Whole of(SchemaPlace place, ObjectNode written, ObjectNode behind, Optional<String> inner) {
        ObjectNode all = behind.isEmpty() ? written : behind.deepCopy().setAll(written);
        return new Whole(written, behind, all, inner, place.chooser(all));
    }

    /** The rows' fields: those given in the order of the file, then the schema's others. */
    List<Field> fields(SchemaPlace place, boolean given) {
        var known = place.fields(all);
        var required = place.required(all);
        var names = new LinkedHashSet<String>();
        written.fieldNames().forEachRemaining(names::add);
        names.addAll(known.keySet());
        var fields = new ArrayList<Field>();
        for (var name : names) {
            var inside = Optional.ofNullable(known.get(name)).orElseGet(() -> unknown(place));
            var value = given ? written.path(name) : MissingNode.getInstance();
            fields.add(new Field(name, inside, value, standard(name, inside, given), required.contains(name)));
        }
        return fields;
    }

    private JsonNode standard(String name, SchemaPlace inside, boolean given) {
        var here = given ? behind.path(name) : all.path(name);
        return here.isMissingNode()
                ? inside.keyword("default", MissingNode.getInstance()).orElse(MissingNode.getInstance())
                : here;
    }

    private static SchemaPlace unknown(SchemaPlace place) {
        return new SchemaPlace(place.schema(), empty());
    }

    private static Optional<BareValue> bareless(SchemaPlace place) {
        return place.bare(MissingNode.getInstance());
    }

    private static Whole bare(SchemaPlace place, BareValue bare, JsonNode value) {
        var written = empty();
        if (!value.isMissingNode()) {
            written.set(bare.field(), value);
        }
        return of(place, written, bare.member(), Optional.of(bare.field()));
    }

    private static Whole object(SchemaPlace place, ObjectNode value, Presets presets) {
        var kind = place.preset(value);
        var behind = kind.filter(known -> value.has(PRESET))
                .flatMap(known -> presets.fields(known, value.get(PRESET).asText()));
        return of(place, value, behind.orElseGet(Whole::empty), Optional.empty());
    }

    private static Whole unwritten(SchemaPlace place, JsonNode standard) {
        return of(place, (ObjectNode) standard, empty(), Optional.empty());
    }

    private static Whole named(SchemaPlace place, JsonNode name, Presets presets) {
        var written = empty();
        if (!name.isMissingNode()) {
            written.set(PRESET, name);
        }
        FileKind kind = place.preset(name).orElseThrow();
        return of(place, written, presets.fields(kind, name.asText()).orElseGet(Whole::empty), Optional.of(PRESET));
    }

    private static ObjectNode empty() {
        return JsonNodeFactory.instance.objectNode();
    }
}
