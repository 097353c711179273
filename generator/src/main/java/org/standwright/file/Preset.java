package org.standwright.file;

import java.nio.file.Path;
import java.util.Optional;
import org.standwright.file.text.SourceText;

/**
 * A preset that was found.
 *
 * @param name that a design file calls it by
 * @param path of its file; empty when it is built in
 */
public record Preset(FileKind kind, String name, Optional<Path> path) {

    /** Its file's text. */
    public String text() {
        return source().text();
    }

    /** What it describes, with the presets that it names. */
    public Object read(PresetLibrary presets) {
        return presets.read(this).record();
    }

    SourceText source() {
        return path.map(SourceText::read)
                .orElseGet(() -> BuiltInPresets.published().read(kind, name));
    }
}
