package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.file.FileKind;
import org.standwright.file.text.Pointer;
import org.standwright.unit.Units;

/** One field of a design file as a form shows it. */
public final class Row {
    private final Optional<Row> parent;
    private final String pointer;
    private final Field field;
    private final Presets presets;
    private final Input input;
    private Optional<Whole> whole = Optional.empty();
    private Optional<List<Row>> rows = Optional.empty();

    Row(Optional<Row> parent, String pointer, Field field, Presets presets) {
        this.parent = parent;
        this.pointer = pointer;
        this.field = field;
        this.presets = presets;
        this.input = input(Input.of(field.place(), field.given()));
    }

    /** The row that this one is in; empty for the whole file. */
    public Optional<Row> parent() {
        return parent;
    }

    /** Where its value is in the file, or would be (RFC 6901). A value that stands for an object is where that is. */
    public String pointer() {
        return pointer;
    }

    /** The field's name, or the entry's number from 0. */
    public String name() {
        return field.name();
    }

    /** The names of the rows that lead here: the same before and after a value is opened as an object. */
    public String path() {
        return parent.map(around -> Pointer.child(around.path(), name())).orElse("");
    }

    public Input input() {
        return input;
    }

    /** 'Working height', 'Bay 2'. */
    public String label() {
        return parent.filter(Row::isList)
                .map(list -> Label.of(Label.one(list.name())) + " " + (index() + 1))
                .orElseGet(() -> Label.of(name()));
    }

    /** What an entry of this list is called: 'bay'. */
    public String oneOf() {
        return Label.one(name());
    }

    /** What the schema says about it. */
    public String description() {
        return word("description").orElse("");
    }

    /** Whether the file gives it. */
    public boolean isGiven() {
        return field.isGiven();
    }

    /** Whether it must be given. */
    public boolean isRequired() {
        return field.required();
    }

    /** Whether the schema knows it. */
    public boolean isKnown() {
        return !field.place().place().isEmpty();
    }

    /** Whether it is an entry of a list. */
    public boolean isEntry() {
        return parent.filter(Row::isList).isPresent();
    }

    public boolean isList() {
        return input == Input.LIST;
    }

    /** Its value as written, text without its quotes; empty where it is left out. */
    public Optional<String> written() {
        return Optional.of(field.given())
                .filter(value -> !value.isMissingNode())
                .map(JsonValue::words);
    }

    /** Its value as JSON; empty where it is left out. */
    public Optional<String> json() {
        return Optional.of(field.given())
                .filter(value -> !value.isMissingNode())
                .map(JsonValue::json);
    }

    /** What holds where it is left out, as people read it: the preset's value or the schema's. */
    public Optional<String> standard() {
        return Optional.of(field.standard())
                .filter(value -> !value.isMissingNode())
                .map(JsonValue::words);
    }

    /** What might be written, for a field of no standard value. */
    public Optional<String> example() {
        return field.place()
                .keyword("examples", field.value())
                .filter(examples -> !examples.isEmpty())
                .map(examples -> JsonValue.words(examples.get(0)));
    }

    /** The values that it may have. */
    public List<Choice> choices() {
        var choices = new ArrayList<Choice>();
        field.place()
                .keyword("enum", field.value())
                .ifPresent(values -> values.forEach(
                        value -> choices.add(new Choice(Label.ofChoice(JsonValue.words(value)), value.toString()))));
        return List.copyOf(choices);
    }

    /** The kind of preset that is named here. */
    public Optional<FileKind> preset() {
        return input == Input.PRESET_NAME
                ? field.place().preset(field.value()).or(() -> parent.flatMap(Row::presetOfFields))
                : field.place().preset(field.value());
    }

    /** The field "preset" of an object is a preset's name, though the schema says no more than text. */
    private Input input(Input asked) {
        boolean isName = asked == Input.TEXT
                && name().equals(Whole.PRESET)
                && parent.flatMap(Row::presetOfFields).isPresent();
        return isName ? Input.PRESET_NAME : asked;
    }

    private Optional<FileKind> presetOfFields() {
        return field.place().preset(whole().all());
    }

    /** Names of the presets that may be named here. */
    public List<String> presetNames() {
        return preset().map(presets::names).orElse(List.of());
    }

    public OptionalDouble least() {
        return number("minimum");
    }

    public OptionalDouble most() {
        return number("maximum");
    }

    /** How many entries this list must have. */
    public int fewest() {
        return (int) number("minItems").orElse(0);
    }

    /** How many entries this list may have. */
    public int mostEntries() {
        return (int) number("maxItems").orElse(Integer.MAX_VALUE);
    }

    /** Unit of plain numbers here. */
    public Units unit() {
        return Units.named(own("unit")).or(() -> parent.map(Row::unit)).orElse(Units.MM);
    }

    /** Whether this row chooses what the group around it is. */
    public boolean isChooser() {
        return parent.filter(group -> !group.isList())
                .flatMap(group -> group.whole().chooser())
                .filter(name()::equals)
                .isPresent();
    }

    /** Whether this and all that is inside shows and does the same as another row. */
    public boolean isLike(Row other) {
        return isGiven()
                && field.given().equals(other.field.given())
                && field.required() == other.field.required()
                && pointer.equals(other.pointer)
                && unit() == other.unit();
    }

    /** The rows inside, those given first and in the order of the file; none in a list or a group to be added first. */
    public List<Row> rows() {
        if (rows.isEmpty()) {
            rows = Optional.of(List.copyOf(inside()));
        }
        return rows.get();
    }

    /** The row inside of one name. */
    public Optional<Row> row(String name) {
        return rows().stream().filter(row -> row.name().equals(name)).findFirst();
    }

    /** Whether a group must be added as a whole before its fields can be: it is left out and nothing stands for it. */
    public boolean mustBeAdded() {
        return !isGiven()
                && field.standard().isMissingNode()
                && input == Input.GROUP
                && !isRequired()
                && whole().inner().isEmpty();
    }

    /** In a few words: 'Graduated drawers, 4', 'Shelf "glue"'. */
    public String summary() {
        return Summary.of(this);
    }

    /** What writes this value in the place of what is written. */
    public Change set(String json) {
        return Changes.set(this, JsonValue.of("[" + json + "]").get(0));
    }

    /** What a person typed here, as JSON. */
    public String jsonOf(String typed) {
        return Typed.json(input, typed);
    }

    /** What makes a list of one entry more, where the list is left out. */
    public Change begin(String entry) {
        return Changes.begin(this, JsonValue.of("[" + entry + "]").get(0));
    }

    /** What makes this row's group another member of its family, or changes this choice. */
    public Change choose(String json) {
        return isChooser()
                ? Changes.member(
                        parent.orElseThrow(),
                        name(),
                        JsonValue.of("[" + json + "]").get(0))
                : set(json);
    }

    /** What writes the fields of the preset that is named here in the place of its name; empty where none is. */
    public Optional<Change> writeOut() {
        return Changes.writtenOut(this);
    }

    /** What adds this group or list. */
    public Change add() {
        return Changes.set(this, StartValue.of(this));
    }

    /** A sensible entry of this list, as JSON. */
    public String newEntry() {
        return JsonValue.json(StartValue.entry(this, Optional.empty()));
    }

    /** A sensible entry of this list, of one member of its family. */
    public String newEntry(Choice member) {
        return JsonValue.json(StartValue.entry(
                this, Optional.of(JsonValue.of("[" + member.json() + "]").get(0))));
    }

    /** The members that an entry of this list can be. */
    public List<Choice> members() {
        return StartValue.members(this);
    }

    /** Number of this entry, from 0. */
    public int index() {
        return Integer.parseInt(name());
    }

    Field field() {
        return field;
    }

    Presets presets() {
        return presets;
    }

    Whole whole() {
        if (whole.isEmpty()) {
            whole = Optional.of(Whole.of(field, presets));
        }
        return whole.get();
    }

    private List<Row> inside() {
        if (isList()) {
            return entries();
        }
        if (!input.holdsRows() || mustBeAdded()) {
            return List.of();
        }
        var fields = whole().fields(field.place(), isGiven());
        if (input == Input.PRESET) {
            fields.sort((a, b) ->
                    Boolean.compare(b.name().equals(Whole.PRESET), a.name().equals(Whole.PRESET)));
        }
        return fields.stream()
                .filter(inside -> input != Input.PRESET
                        || !isEmptyPreset()
                        || inside.name().equals(Whole.PRESET))
                .map(inside -> new Row(Optional.of(this), pointerOf(inside.name()), inside, presets))
                .toList();
    }

    private boolean isEmptyPreset() {
        return field.value().isMissingNode();
    }

    private String pointerOf(String name) {
        return whole().inner().filter(name::equals).isPresent() ? pointer : Pointer.child(pointer, name);
    }

    private List<Row> entries() {
        var entries = new ArrayList<Row>();
        var items = field.place().items(field.given()).orElseThrow();
        for (var entry : field.given()) {
            var name = String.valueOf(entries.size());
            var inside = new Field(name, items, entry, MissingNode.getInstance(), false);
            entries.add(new Row(Optional.of(this), Pointer.child(pointer, entries.size()), inside, presets));
        }
        return entries;
    }

    private String own(String name) {
        return field.value().path(name).asText();
    }

    private OptionalDouble number(String keyword) {
        var value = field.place().keyword(keyword, field.value());
        return value.isPresent() ? OptionalDouble.of(value.get().asDouble()) : OptionalDouble.empty();
    }

    private Optional<String> word(String keyword) {
        return field.place().word(keyword, field.value());
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %s %s", pointer, input, written().orElse("-"));
    }

    /** An object to which fields are added. */
    static ObjectNode nothing() {
        return JsonNodeFactory.instance.objectNode();
    }

    JsonNode given() {
        return field.given();
    }
}
