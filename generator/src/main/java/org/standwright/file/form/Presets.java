package org.standwright.file.form;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import org.standwright.file.SchemaPlace;
import org.standwright.file.text.DesignFileException;

/** The presets that a form's file may name, each read once. */
public final class Presets {
    private final PresetLibrary library;
    private final Map<FileKind, List<String>> names = new HashMap<>();
    private final Map<FileKind, Map<String, Optional<ObjectNode>>> fields = new HashMap<>();

    /** @param library of the folder where the file lies */
    public Presets(PresetLibrary library) {
        this.library = library;
    }

    /** What may be named, sorted. */
    public List<String> names(FileKind kind) {
        return names.computeIfAbsent(
                kind, asked -> library.list(asked).stream().map(Preset::name).toList());
    }

    /** A preset's fields, every quantity with its unit; empty when there is no such preset, or it cannot be read. */
    Optional<ObjectNode> fields(FileKind kind, String name) {
        return fields.computeIfAbsent(kind, asked -> new HashMap<>())
                .computeIfAbsent(name, asked -> library.find(kind, asked).flatMap(Presets::read));
    }

    private static Optional<ObjectNode> read(Preset preset) {
        try {
            return Optional.of(JsonValue.of(preset.text()))
                    .filter(ObjectNode.class::isInstance)
                    .map(root -> withUnits((ObjectNode) root));
        } catch (DesignFileException e) {
            return Optional.empty(); // told where the file that names it is read
        }
    }

    private static ObjectNode withUnits(ObjectNode root) {
        var fields = PlainNumbers.withUnits(root, SchemaPlace.ofFile());
        fields.remove(List.of("version", "kind", "$schema"));
        return fields;
    }
}
