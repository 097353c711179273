package org.standwright.viewer.work;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A text that is laid on the desk.
 *
 * @param file that it was read from
 * @param what where it comes from, for the menu: 'Open planer-stand'
 * @param saved the text as it stands in the file; another one where work is to be taken up again
 */
public record Opened(Optional<Path> file, String what, String text, String saved) {
    public static Opened fromFile(Path file, String text) {
        return new Opened(Optional.of(file), "Open " + file.getFileName(), text, text);
    }

    /** One that has no file yet; nothing is lost when it is left as it is. */
    public static Opened fresh(String name, String text) {
        return new Opened(Optional.empty(), name, text, text);
    }
}
