package org.standwright.viewer.scene;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Pose;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.Furniture;
import org.standwright.design.built.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;
import org.standwright.solid.PlacedSolid;

/** Furniture that comes with the program, worked out for the screen. */
public record Sample<F extends Furniture>(F furniture, AssemblySolids solids) {
    private static final PresetLibrary PRESETS = PresetLibrary.of(Path.of(""), Optional.empty());

    public static Sample<Stand> stand(String preset) {
        return of(StandBuilder.build((StandDesign)
                DesignFiles.parse(preset, text(FileKind.STAND, preset), PRESETS).design()));
    }

    public static Sample<CleatWall> wall(String preset) {
        return of(builtWall(preset));
    }

    /** Without its solids, which take longer. */
    public static CleatWall builtWall(String preset) {
        return WallBuilder.build((WallDesign) DesignFiles.parse(preset, text(FileKind.CLEAT_WALL, preset), PRESETS)
                .design());
    }

    /** Names of all presets of a kind. */
    public static List<String> names(FileKind kind) {
        return PRESETS.list(kind).stream().map(preset -> preset.name()).toList();
    }

    public static <F extends Furniture> Sample<F> of(F furniture) {
        return new Sample<>(furniture, AssemblySolids.of(furniture.assembly(), Fineness.SCREEN));
    }

    public Pose closed() {
        return Pose.closed(furniture.assembly());
    }

    public PlacedSolid part(String label) {
        return solids.solids().stream()
                .filter(placed -> placed.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static String text(FileKind kind, String preset) {
        return PRESETS.find(kind, preset).orElseThrow().text();
    }
}
