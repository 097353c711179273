package org.standwright.viewer.preset;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import org.standwright.file.StartingFile;
import org.standwright.file.StartingWall;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Built;
import org.standwright.solid.Fineness;
import org.standwright.unit.Measure;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;
import org.standwright.viewer.work.Opened;

/** Everything that one can begin with. */
public final class Beginning {
    private final PresetLibrary presets;

    public Beginning(PresetLibrary presets) {
        this.presets = presets;
    }

    /** Complete designs: the stands, then the walls. */
    public List<Preset> designs() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL)
                .flatMap(kind -> presets.list(kind).stream())
                .toList();
    }

    /** Names of the machines that a first stand can be made for. */
    public List<String> machines() {
        return presets.list(FileKind.MACHINE).stream().map(Preset::name).toList();
    }

    Opened opened(Preset design) {
        return Opened.fresh("Begin with " + design.name(), design.text());
    }

    /** Throws {@link DesignFileException} where the machine's preset cannot be read. */
    Opened standFor(String machine, Units units) {
        return Opened.fresh("Begin a stand for " + machine, StartingFile.forMachine(presets, machine, units));
    }

    /**
     * A first wall.
     *
     * @param width as typed, such as '3600 mm' or 12'
     * @throws IllegalArgumentException with the reason, for what is no length of a wall
     */
    Opened wall(String width, String height, Units units) {
        var text = StartingWall.text(units, length("Width", width, units), length("Height", height, units));
        return Opened.fresh("Begin a wall", text);
    }

    private static double length(String what, String typed, Units units) {
        try {
            return Measure.LENGTH.parse(typed, units.unitOf(Measure.LENGTH));
        } catch (QuantityException refusal) {
            throw new IllegalArgumentException(
                    what + " '" + typed + "' " + refusal.rule() + ". " + refusal.wayOut(), refusal);
        }
    }

    /** What a design looks like; nothing for one that cannot be built. Takes some hundredths of a second. */
    Optional<Look> look(Preset design) {
        try {
            var read = DesignFiles.parse(design.name(), design.text(), presets).design();
            var built = Built.of(read, Fineness.SCREEN);
            return Optional.of(
                    new Look(read.name(), Silhouette.of(built.furniture().assembly())));
        } catch (DesignFileException | org.standwright.design.ImpossibleDesignException refusal) {
            return Optional.empty();
        }
    }

    /** @param name what its maker calls it */
    record Look(String name, Silhouette silhouette) {}
}
