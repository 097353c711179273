package org.standwright.file;

import java.nio.file.Path;
import java.util.Arrays;
import org.standwright.design.Design;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.SourceText;

/** The door to design files. */
public final class DesignFiles {
    private DesignFiles() {}

    /**
     * Reads a design and every preset that it names.
     *
     * @throws DesignFileException with all that is wrong with the file and its presets
     */
    public static DesignFile read(Path file, PresetLibrary presets) {
        return read(SourceText.read(file), presets);
    }

    /**
     * Reads a design from a text in memory, such as one that is being edited.
     *
     * @param file what messages call it
     * @throws DesignFileException with all that is wrong with the text and its presets
     */
    public static DesignFile parse(String file, String text, PresetLibrary presets) {
        return read(new SourceText(file, text), presets);
    }

    /** The JSON Schema (draft 2020-12) of design files and presets. */
    public static String schema() {
        return DesignSchema.published().text();
    }

    private static DesignFile read(SourceText source, PresetLibrary presets) {
        var designs =
                Arrays.stream(FileKind.values()).filter(FileKind::isDesign).toList();
        var read = ReadFile.of(source, designs, presets);
        return new DesignFile(read.json(), (Design) read.record());
    }
}
