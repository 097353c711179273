package org.standwright.file.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;

/** What has to be written so that a row has a value: where nothing is around it yet, that is written too. */
final class Changes {
    private Changes() {}

    static Change set(Row row, JsonNode value) {
        var around = row.parent();
        if (around.isEmpty() || isWrittenIn(row, around.get())) {
            return new Change(row.pointer(), JsonValue.json(value));
        }
        var group = around.get();
        if (isInner(row, group) || isNameForObject(row, group)) {
            return set(group, value);
        }
        var object = asObject(group);
        object.set(row.name(), value);
        return set(group, object);
    }

    static Change begin(Row list, JsonNode entry) {
        var entries = JsonNodeFactory.instance.arrayNode();
        list.field().standard().forEach(entries::add);
        return set(list, entries.add(entry));
    }

    /** The group as another member of its family: what both have stays, what the new one needs is added. */
    static Change member(Row group, String chooser, JsonNode member) {
        var choice = Row.nothing();
        choice.set(chooser, member);
        var place = group.field().place();
        var fields = place.fields(choice);
        asObject(group).properties().stream()
                .filter(old -> !old.getKey().equals(chooser) && fields.containsKey(old.getKey()))
                .filter(old -> Suitable.is(old.getValue(), fields.get(old.getKey())))
                .forEach(old -> choice.set(old.getKey(), old.getValue()));
        StartValue.addRequired(choice, place, group.unit(), group.presets());
        return set(group, bareOr(choice, group));
    }

    /** The object, or the one value that says the same. */
    private static JsonNode bareOr(ObjectNode object, Row group) {
        var value = group.field().place().bare(MissingNode.getInstance());
        return value.filter(
                        bare -> object.equals(bare.member().deepCopy().set(bare.field(), object.path(bare.field()))))
                .map(bare -> object.get(bare.field()))
                .orElse(object);
    }

    static Optional<Change> writtenOut(Row row) {
        var name = row.whole().written().path(Whole.PRESET);
        var behind = row.whole().behind();
        if (!row.isGiven() || name.isMissingNode() || behind.isEmpty()) {
            return Optional.empty();
        }
        var object = behind.deepCopy();
        object.setAll(row.whole().written());
        object.remove(Whole.PRESET);
        var known = row.field().place().fields(object).keySet();
        object.retain(List.copyOf(known));
        return Optional.of(set(row, object));
    }

    private static boolean isWrittenIn(Row row, Row group) {
        return group.given().isContainerNode() && !isNameForObject(row, group);
    }

    /** Whether the row is what a group is that is no object. */
    private static boolean isInner(Row row, Row group) {
        return group.whole().inner().filter(row.name()::equals).isPresent();
    }

    /** Whether a preset's name takes the place of an object that names none. */
    private static boolean isNameForObject(Row row, Row group) {
        return group.input() == Input.PRESET
                && row.name().equals(Whole.PRESET)
                && !group.given().has(Whole.PRESET);
    }

    /** What is written, or holds, as an object. */
    private static ObjectNode asObject(Row group) {
        var object = group.whole().written().deepCopy();
        var bare = group.field().place().bare(group.field().value());
        return bare.isPresent() ? bare.get().member().deepCopy().setAll(object) : object;
    }
}
