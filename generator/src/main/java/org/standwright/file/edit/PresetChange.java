package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.Optional;
import org.standwright.file.FileKind;

/** Rewrites what a preset gives: by the name of another one, or with the fields in which it differs. */
final class PresetChange {
    private static final String PRESET = "preset";

    private final DesignChange text;
    private final ValueWriter writer;
    private final NamedPresets presets;

    PresetChange(DesignChange text, ValueWriter writer, NamedPresets presets) {
        this.text = text;
        this.writer = writer;
        this.presets = presets;
    }

    void change(Changed value) {
        var kind = value.here().preset(value.written()).orElseThrow();
        var exact = presets.name(kind, value.after());
        if (exact.isPresent()) {
            name(value, exact.get());
        } else {
            differing(value, kind);
        }
    }

    private void differing(Changed value, FileKind kind) {
        var written = value.written();
        var name =
                written.isTextual() ? written.textValue() : written.path(PRESET).asText();
        var fewest = writer.fewest(value.after(), Optional.of(name), value.here(), value.around());
        var base = presets.tree(kind, name).filter(tree -> NamedPresets.isLike(tree, value.after()));
        boolean stays = base.isPresent() && fewest.path(PRESET).asText(name).equals(name);
        if (written.isObject() && stays) {
            beside(value, base.get());
        } else if (written.isObject() && !written.has(PRESET)) {
            text.fields(value);
        } else {
            text.set(value, fewest);
        }
    }

    private void name(Changed value, String preset) {
        if (value.written().isTextual()) {
            text.set(value, TextNode.valueOf(preset));
        } else if (value.written().has(PRESET) && namesNoMore(value.written())) {
            var name = value.here().fields(value.written()).get(PRESET);
            text.set(value.field(PRESET, name), TextNode.valueOf(preset));
        } else {
            text.set(
                    value,
                    value.written().has("note")
                            ? ValueWriter.naming(value.after(), preset)
                            : writer.write(value.after(), value.here(), value.around()));
        }
    }

    private static boolean namesNoMore(JsonNode written) {
        return 1 + (written.has("kind") ? 1 : 0) + (written.has("note") ? 1 : 0) == written.size();
    }

    /** Rewrites the fields beside a preset's name; those that it has itself need none. */
    private void beside(Changed value, JsonNode base) {
        value.here().fields(value.written()).forEach((name, place) -> {
            var field = value.field(name, place);
            boolean needless = value.written().has(name) && SameTree.is(base.path(name), field.after());
            if (needless && !field.isSame()) {
                text.remove(field.at());
            } else {
                text.value(field);
            }
        });
    }
}
