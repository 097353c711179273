package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.viewer.work.Opened;

/** What the window opens with when no file is named: it is never empty. */
final class Demo {
    private static final String NAME = "planer-stand";

    private Demo() {}

    static Opened opened() {
        return preset(FileKind.STAND, NAME);
    }

    /** A preset that comes with the program, to be changed and saved under a name of its own. */
    static Opened preset(FileKind kind, String name) {
        var presets = PresetLibrary.of(Path.of(""), Optional.empty());
        return Opened.fresh(
                "Open " + name, presets.find(kind, name).orElseThrow().text());
    }
}
