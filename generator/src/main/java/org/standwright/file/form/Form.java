package org.standwright.file.form;

import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.Optional;
import org.standwright.file.SchemaPlace;
import org.standwright.file.text.DesignFileException;

/** The door of this package. */
public final class Form {
    private Form() {}

    /**
     * The row of a whole file; what it holds are the rows inside it.
     *
     * @throws DesignFileException when the text is no JSON, is nested too deeply, or names a field twice
     */
    public static Row of(String text, Presets presets) {
        var file = new Field("", SchemaPlace.ofFile(), JsonValue.of(text), MissingNode.getInstance(), true);
        return new Row(Optional.empty(), "", file, presets);
    }
}
