package org.standwright;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.built.Furniture;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import org.standwright.solid.AssemblySolids;

/** The presets that come with the program, for tests that go through all of them. */
public final class Presets {
    private static final PresetLibrary SHIPPED = PresetLibrary.of(Path.of("."), Optional.empty());

    private Presets() {}

    public static PresetLibrary shipped() {
        return SHIPPED;
    }

    /** Every complete stand. */
    public static Stream<StandDesign> stands() {
        return SHIPPED.list(FileKind.STAND).stream().map(Presets::design);
    }

    /** Every complete wall of cleats. */
    public static Stream<WallDesign> walls() {
        return SHIPPED.list(FileKind.CLEAT_WALL).stream().map(preset -> wall(preset.name(), preset.text()));
    }

    /** Every complete stand and wall, built; once for all tests of a run. */
    public static List<Furniture> furniture() {
        return Built.FURNITURE;
    }

    /** The solids of all of them, as fine as files need them; once for all tests of a run. */
    public static List<AssemblySolids> solids() {
        return Built.SOLIDS;
    }

    private static final class Built {
        private static final List<Furniture> FURNITURE = Stream.<Furniture>concat(
                        stands().map(StandBuilder::build), walls().map(WallBuilder::build))
                .toList();
        private static final List<AssemblySolids> SOLIDS = FURNITURE.stream()
                .map(Furniture::assembly)
                .map(AssemblySolids::of)
                .toList();
    }

    /** Names of the machines that a starting file can be made for. */
    public static Stream<String> machines() {
        return SHIPPED.list(FileKind.MACHINE).stream().map(Preset::name);
    }

    public static StandDesign design(Preset preset) {
        return stand(preset.name(), preset.text());
    }

    /** The walls that a text describes with the help of the presets. */
    public static WallDesign wall(String file, String text) {
        return (WallDesign) DesignFiles.parse(file, text, SHIPPED).design();
    }

    /** The stand that a text describes with the help of the presets. */
    public static StandDesign stand(String file, String text) {
        return (StandDesign) DesignFiles.parse(file, text, SHIPPED).design();
    }
}
