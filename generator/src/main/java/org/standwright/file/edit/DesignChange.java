package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Walks a text beside what it means before and after a change, and rewrites what differs, as far inside as it can. */
final class DesignChange {
    private final ValueWriter writer;
    private final PresetChange presets;
    private final OneLine oneLine;
    private String text;

    DesignChange(String text, ValueWriter writer, NamedPresets presets) {
        this.text = text;
        this.writer = writer;
        this.presets = new PresetChange(this, writer, presets);
        this.oneLine = new OneLine(Style.of(text, WrittenReader.read(text)));
    }

    String text() {
        return text;
    }

    /** Rewrites what differs in the fields of an object. */
    void fields(Changed object) {
        var fields = object.here().fields(object.written());
        // first, so that no line seems too long that will not be
        fields.forEach((name, place) -> {
            var field = object.field(name, place);
            if (field.after().isMissingNode() && !field.isSame()) {
                removed(field);
            }
        });
        fields.forEach((name, place) -> {
            if (object.after().has(name)) {
                value(object.field(name, place));
            }
        });
    }

    /** Rewrites what differs inside a value. */
    void value(Changed value) {
        if (value.isSame()) {
            return;
        }
        var written = value.written();
        if (value.here().preset(written).isPresent() && !written.isMissingNode()) {
            presets.change(value);
        } else if (written.isArray() && written.size() == value.before().size()) {
            new ListChange(this, value).change();
        } else if (written.isObject() && value.isOfOneKind()) {
            fields(value);
        } else {
            replace(value);
        }
    }

    /** Writes a value as a whole where it means something else. */
    void whole(Changed value) {
        if (!value.isSame()) {
            replace(value);
        }
    }

    void insert(Changed list, int index) {
        var entry = writer.write(list.after().get(index), list.items(), list.around());
        text = JsonEdit.insert(text, list.at(), index, oneLine.of(entry));
    }

    void remove(String at) {
        text = JsonEdit.remove(text, at);
    }

    /** Puts {@code value} into the text, with the note that stands in the place of it. */
    void set(Changed place, JsonNode value) {
        int before = JsonEdit.place(text, place.at())
                .map(found -> Lines.length(text, found.offset()))
                .orElse(Lines.LONGEST);
        var changed = JsonEdit.set(text, place.at(), oneLine.of(noted(place.written(), value)));
        boolean fitted = before <= Lines.LONGEST && !place.written().isMissingNode();
        text = fitted ? Lines.broken(changed, Steps.of(place.at())) : changed;
    }

    private void replace(Changed value) {
        if (value.after().isMissingNode()) {
            removed(value);
        } else {
            set(value, likewise(value));
        }
    }

    private void removed(Changed value) {
        if (!value.written().isMissingNode()) {
            remove(value.at());
        }
    }

    /** A quantity as a plain number where there was one, an object where there was a note. */
    private JsonNode likewise(Changed value) {
        var after = value.after();
        if (value.written().has("note") && after.isObject()) {
            return writer.object(after, value.here(), value.around());
        }
        return value.here()
                .measure(value.written())
                .filter(measure -> value.written().isNumber() && after.isNumber())
                .flatMap(measure -> QuantityText.bare(after.doubleValue(), measure, value.around()))
                .orElseGet(() -> writer.write(after, value.here(), value.around()));
    }

    private static JsonNode noted(JsonNode written, JsonNode value) {
        if (!written.has("note") || !(value instanceof ObjectNode object)) {
            return value;
        }
        var noted = JsonNodeFactory.instance.objectNode();
        noted.set("note", written.get("note"));
        return noted.setAll(object);
    }
}
