package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.standwright.assembly.Pose;
import org.standwright.check.Finding;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFile;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Product;
import org.standwright.solid.Fineness;
import org.standwright.viewer.scene.Scenery;

/**
 * A piece of furniture with all that the window shows of it.
 *
 * @param name what its maker calls it
 * @param sizes its main sizes, in the maker's unit
 * @param findings what the rules have to say, the heaviest first
 * @param product all that was worked out, from which an edited design starts
 */
record OpenedDesign(String name, String sizes, List<Finding> findings, Scenery scenery, Product product) {
    private static final String DEMO = "planer-stand";

    /**
     * Reads a design and works it out, or the demo that comes with the program. Slow.
     *
     * @throws DesignFileException when it cannot be read or built
     * @throws org.standwright.solid.SolidException when a part has no closed solid
     */
    static OpenedDesign open(Optional<Path> file) {
        return open(file, design -> Product.of(design, Fineness.SCREEN));
    }

    /** Opens as {@link #open} does, after this one: solids of parts that are the same in both are taken over. */
    OpenedDesign next(Optional<Path> file) {
        return open(file, product::edited);
    }

    private static OpenedDesign open(Optional<Path> file, Function<Design, Product> work) {
        return of(product(file.map(OpenedDesign::read).orElseGet(OpenedDesign::demo), work));
    }

    private static OpenedDesign of(Product product) {
        var furniture = product.furniture();
        return new OpenedDesign(
                furniture.design().name(),
                furniture.accept(new Sizes()),
                product.findings().stream()
                        .sorted(Comparator.comparing(Finding::severity))
                        .toList(),
                Scenery.of(product.solids(), Pose.closed(furniture.assembly())),
                product);
    }

    private static DesignFile read(Path file) {
        return DesignFiles.read(file, PresetLibrary.of(file.toAbsolutePath().getParent(), Optional.empty()));
    }

    private static DesignFile demo() {
        var presets = PresetLibrary.of(Path.of(""), Optional.empty());
        var demo = presets.find(FileKind.STAND, DEMO).orElseThrow();
        return DesignFiles.parse(DEMO, demo.text(), presets);
    }

    private static Product product(DesignFile file, Function<Design, Product> work) {
        try {
            return work.apply(file.design());
        } catch (ImpossibleDesignException e) {
            throw new DesignFileException(List.of(file.problem(e)));
        }
    }
}
