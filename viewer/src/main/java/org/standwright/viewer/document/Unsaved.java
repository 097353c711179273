package org.standwright.viewer.document;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Work that stands in no file of its maker's yet.
 *
 * @param file that it belongs to; empty text where it has none
 * @param what for the menu
 * @param saved the text in that file, when it was read
 */
public record Unsaved(String file, String what, String text, String saved) {
    public static Unsaved of(Optional<Path> file, String what, String text, String saved) {
        return new Unsaved(file.map(Path::toString).orElse(""), what, text, saved);
    }

    public Optional<Path> path() {
        return file.isEmpty() ? Optional.empty() : Optional.of(Path.of(file));
    }
}
