package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFile;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Product;
import org.standwright.viewer.scene.Scenery;

/**
 * A stand with all that the window shows of it.
 *
 * @param name what its maker calls it
 * @param sizes working height and outside size, in the maker's unit
 * @param findings what the rules have to say, the heaviest first
 */
record OpenedStand(String name, String sizes, List<Finding> findings, Scenery scenery) {
    private static final String DEMO = "planer-stand";

    /**
     * Reads a design and works it out, or the demo that comes with the program. Slow.
     *
     * @throws DesignFileException when it cannot be read or built
     * @throws org.standwright.solid.SolidException when a part has no closed solid
     */
    static OpenedStand open(Optional<Path> file) {
        return of(product(file.map(OpenedStand::read).orElseGet(OpenedStand::demo)));
    }

    private static OpenedStand of(Product product) {
        var stand = product.stand();
        return new OpenedStand(
                stand.design().name(),
                new Sizes(stand).text(),
                product.findings().stream()
                        .sorted(Comparator.comparing(Finding::severity))
                        .toList(),
                Scenery.of(stand.assembly(), product.solids()));
    }

    private static DesignFile read(Path file) {
        return DesignFiles.read(file, PresetLibrary.of(file.toAbsolutePath().getParent(), Optional.empty()));
    }

    private static DesignFile demo() {
        var presets = PresetLibrary.of(Path.of(""), Optional.empty());
        var demo = presets.find(FileKind.STAND, DEMO).orElseThrow();
        return DesignFiles.parse(DEMO, demo.text(), presets);
    }

    private static Product product(DesignFile file) {
        try {
            return Product.of(file.design());
        } catch (ImpossibleDesignException e) {
            throw new DesignFileException(List.of(file.problem(e)));
        }
    }
}
