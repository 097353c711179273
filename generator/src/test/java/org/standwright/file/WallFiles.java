package org.standwright.file;

import java.nio.file.Path;
import java.util.Optional;
import org.standwright.design.WallDesign;

/** Walls that come with the program, for tests. */
public final class WallFiles {
    private WallFiles() {}

    public static WallDesign builtIn(String name) {
        var presets = PresetLibrary.of(Path.of("."), Optional.empty());
        var preset = presets.find(FileKind.CLEAT_WALL, name).orElseThrow();
        return (WallDesign) ReadFile.of(preset, presets).record();
    }
}
