package org.standwright.viewer.document;

import java.util.Optional;
import java.util.function.UnaryOperator;
import org.standwright.design.Design;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;
import org.standwright.file.edit.DesignEdit;

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

    /**
     * The text after a change of the design that it describes; all else in it stays.
     *
     * @throws org.standwright.file.text.DesignFileException when there is no design in it
     * @throws org.standwright.file.edit.JsonEditException when the change cannot be written
     */
    public String changed(String name, PresetLibrary presets, UnaryOperator<Design> change) {
        var before = DesignFiles.parse(name, text, presets).design();
        return DesignEdit.of(text, before, change.apply(before), presets);
    }

    /** The state after an edit; nothing where the text stays as it is. */
    public Optional<Document> edited(String by, String newText) {
        return newText.equals(text) ? Optional.empty() : Optional.of(new Document(by, newText));
    }
}
