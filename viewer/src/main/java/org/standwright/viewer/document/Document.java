package org.standwright.viewer.document;

import java.util.Optional;
import org.standwright.file.PresetLibrary;

/**
 * One state of a design file.
 *
 * @param what led to it, for the menu: 'Change working height'
 * @param text JSON, good or not
 */
public record Document(String what, String text) {
    /**
     * The design that it describes, or what is wrong with it.
     *
     * @param name what messages call the file
     */
    public Reading read(String name, PresetLibrary presets) {
        return Reading.of(name, text, presets);
    }

    /** The state after an edit; nothing where the text stays as it is. */
    public Optional<Document> edited(String by, String newText) {
        return newText.equals(text) ? Optional.empty() : Optional.of(new Document(by, newText));
    }
}
