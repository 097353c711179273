package org.standwright.drawing.holder;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;

/** The bench wall that comes with the program, on which all ten kinds of holders hang, with a second rack like its first. */
final class BenchHolders {
    private static final PresetLibrary PRESETS = PresetLibrary.of(Path.of("."), Optional.empty());

    private BenchHolders() {}

    static CleatWall wall(String unit) {
        var rack = "{\"kind\": \"slots\", \"name\": \"file rack\", \"slot\": \"20 mm\", \"things\": {\"count\": 8, "
                + "\"width\": \"38 mm\", \"depth\": \"40 mm\", \"height\": \"130 mm\", \"mass\": \"0.25 kg\", "
                + "\"use\": \"daily\"}}";
        var text = PRESETS.show("cleat-wall/bench-wall")
                .replace("\"unit\": \"mm\"", "\"unit\": \"" + unit + "\"")
                .replace("\"count\": 60", "\"count\": 40")
                .replaceFirst("\"holders\": \\[", "\"holders\": [" + rack + ",");
        return WallBuilder.build(
                (WallDesign) DesignFiles.parse("bench-wall.json", text, PRESETS).design());
    }

    static List<EqualHolders> equal(String unit) {
        return EqualHolders.of(wall(unit));
    }

    static EqualHolders named(String name) {
        return equal("mm").stream()
                .filter(holder -> holder.names().contains(name))
                .findFirst()
                .orElseThrow();
    }
}
