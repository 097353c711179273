package org.standwright.drawing.wall;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;

/** Walls that come with the program, worked out, for tests. */
public final class BuiltWalls {
    public static final List<String> NAMES =
            List.of("attic-wall", "bench-wall", "corner-walls", "door-wall", "garage-wall", "panel-wall");

    private BuiltWalls() {}

    /** A wall that comes with the program. */
    public static CleatWall of(String name) {
        var presets = PresetLibrary.of(Path.of("."), Optional.empty());
        var text = presets.show("cleat-wall/" + name);
        return WallBuilder.build(
                (WallDesign) DesignFiles.parse(name + ".json", text, presets).design());
    }

    /** Every strip and every holder with a limit. */
    public static WallLabels labels(CleatWall walls) {
        Map<String, String> limits = new HashMap<>();
        walls.walls().forEach(wall -> wall.strips().forEach(strip -> limits.put(strip.label(), "≤ 142 kg")));
        walls.holders().forEach(holder -> limits.put(holder.name(), "≤ 42 kg"));
        return new WallLabels(limits, Map.of());
    }
}
