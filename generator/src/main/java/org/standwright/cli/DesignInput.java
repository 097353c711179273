package org.standwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFiles;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Product;
import org.standwright.sheet.plan.Effort;
import org.standwright.unit.Units;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The design file that a command works on, and how to read it. */
final class DesignInput {
    @Parameters(paramLabel = "FILE", description = "Design file; 'standwright new' writes one to start from.")
    private Path file;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            converter = UnitWord.class,
            description =
                    "Unit to read back: mm, in (fractions down to 1/32) or in/64. The design file's own without it.")
    private Optional<Units> unit;

    @Mixin
    private PresetsFolder presets;

    /**
     * Reads the design and works it out.
     *
     * @throws DesignFileException with all that is wrong with the file, or the reason why it cannot be built
     */
    Product product() {
        return product(Effort.USUAL);
    }

    /** The same with this much effort for the sheet plan. */
    Product product(Effort effort) {
        return worked(design -> Product.of(design, effort));
    }

    /** What is made of the design, which is read in the wanted unit. Throws as {@link #product()} does. */
    <T> T worked(Function<Design, T> work) {
        var read = DesignFiles.read(file, presets.besides(file.toAbsolutePath().getParent()));
        try {
            return work.apply(unit.map(read.design()::readIn).orElse(read.design()));
        } catch (ImpossibleDesignException refusal) {
            throw new DesignFileException(List.of(read.problem(refusal)));
        }
    }
}
