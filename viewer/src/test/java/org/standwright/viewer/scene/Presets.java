package org.standwright.viewer.scene;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

/** The furniture that comes with the program, as assemblies. */
final class Presets {
    private static final PresetLibrary LIBRARY = PresetLibrary.of(Path.of(""), Optional.empty());

    private Presets() {}

    static List<Assembly> all() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL)
                .flatMap(kind -> LIBRARY.list(kind).stream())
                .map(Presets::built)
                .toList();
    }

    static Assembly stand(String name) {
        return built(LIBRARY.find(FileKind.STAND, name).orElseThrow());
    }

    static Assembly wall(String name) {
        return built(LIBRARY.find(FileKind.CLEAT_WALL, name).orElseThrow());
    }

    static Scenery scenery(Assembly assembly) {
        return Scenery.of(assembly, AssemblySolids.of(assembly, Fineness.SCREEN));
    }

    private static Assembly built(Preset preset) {
        return DesignFiles.parse(preset.name(), preset.text(), LIBRARY).design().accept(new DesignVisitor<Assembly>() {
            @Override
            public Assembly stand(StandDesign design) {
                return StandBuilder.build(design).assembly();
            }

            @Override
            public Assembly wall(WallDesign design) {
                return WallBuilder.build(design).assembly();
            }
        });
    }
}
