package org.standwright.file.edit;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;

/** The presets that a design may name, by what they are. */
final class NamedPresets {
    private final PresetLibrary library;
    private final Map<FileKind, Map<String, JsonNode>> trees = new EnumMap<>(FileKind.class);

    NamedPresets(PresetLibrary library) {
        this.library = library;
    }

    /** Name of the preset that is exactly this. */
    Optional<String> name(FileKind kind, JsonNode tree) {
        return trees(kind).entrySet().stream()
                .filter(preset -> SameTree.is(preset.getValue(), tree))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    Stream<String> names(FileKind kind) {
        return trees(kind).keySet().stream();
    }

    Optional<JsonNode> tree(FileKind kind, String name) {
        return Optional.ofNullable(trees(kind).get(name));
    }

    /** Whether a file may name {@code preset} and replace some of its fields to say {@code tree}. */
    static boolean isLike(JsonNode preset, JsonNode tree) {
        return preset.path("style").equals(tree.path("style"))
                && SameTree.fields(preset, tree).stream().allMatch(tree::has);
    }

    /** Of all that can be read. A design has none: where one is named, no more than its size is taken over. */
    private Map<String, JsonNode> trees(FileKind kind) {
        return trees.computeIfAbsent(kind, asked -> {
            var read = new LinkedHashMap<String, JsonNode>();
            if (!asked.isDesign()) {
                library.list(asked).forEach(preset -> {
                    try {
                        read.put(preset.name(), RecordTree.of(preset.read(library)));
                    } catch (DesignFileException unreadable) {
                        // a preset of the maker's own that has a mistake cannot be named
                    }
                });
            }
            return read;
        });
    }
}
