package org.standwright.viewer.hand;

import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.Design;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;

/** The preset designs, and what is built of a text. */
public final class Sample {
    private static final PresetLibrary PRESETS = PresetLibrary.of(Path.of(""), Optional.empty());

    private Sample() {}

    public static String stand(String name) {
        return PRESETS.find(FileKind.STAND, name).orElseThrow().text();
    }

    public static String wall(String name) {
        return PRESETS.find(FileKind.CLEAT_WALL, name).orElseThrow().text();
    }

    public static Stream<String> stands() {
        return PRESETS.list(FileKind.STAND).stream().map(Preset::name);
    }

    public static Stream<String> walls() {
        return PRESETS.list(FileKind.CLEAT_WALL).stream().map(Preset::name);
    }

    public static Stand built(String text) {
        return StandBuilder.build((StandDesign) design(text));
    }

    public static CleatWall builtWall(String text) {
        return WallBuilder.build((WallDesign) design(text));
    }

    private static Design design(String text) {
        return DesignFiles.parse("design", text, PRESETS).design();
    }
}
