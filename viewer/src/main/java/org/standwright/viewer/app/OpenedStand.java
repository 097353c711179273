package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Stand;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.DesignFile;
import org.standwright.file.DesignFileException;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.viewer.scene.Scenery;

/**
 * A stand with all that the window shows of it.
 *
 * @param name what its maker calls it
 * @param sizes working height and outside size, in the maker's unit
 */
record OpenedStand(String name, String sizes, Scenery scenery) {
    private static final String DEMO = "planer-stand";

    /**
     * Reads and builds a design, or the demo that comes with the program. Slow.
     *
     * @throws DesignFileException when it cannot be read or built
     * @throws org.standwright.solid.SolidException when a part has no closed solid
     */
    static OpenedStand open(Optional<Path> file) {
        return of(build(file.map(OpenedStand::read).orElseGet(OpenedStand::demo)));
    }

    static OpenedStand of(Stand stand) {
        return new OpenedStand(stand.design().name(), new Sizes(stand).text(), Scenery.of(stand.assembly()));
    }

    private static DesignFile read(Path file) {
        return DesignFiles.read(file, PresetLibrary.of(file.toAbsolutePath().getParent(), Optional.empty()));
    }

    private static DesignFile demo() {
        var presets = PresetLibrary.of(Path.of(""), Optional.empty());
        var demo = presets.find(FileKind.STAND, DEMO).orElseThrow();
        return DesignFiles.parse(DEMO, demo.text(), presets);
    }

    private static Stand build(DesignFile file) {
        try {
            return StandBuilder.build(file.design());
        } catch (ImpossibleDesignException e) {
            throw new DesignFileException(List.of(file.problem(e)));
        }
    }
}
