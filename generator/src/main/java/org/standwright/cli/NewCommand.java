package org.standwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.standwright.file.FileKind;
import org.standwright.file.StartingFile;
import org.standwright.file.StartingWall;
import org.standwright.make.NewFile;
import org.standwright.unit.Measure;
import org.standwright.unit.QuantityException;
import org.standwright.unit.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "new",
        description = "Writes a design file to start from: a stand for one machine, or a wall of cleats. Never writes"
                + " over a file.")
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            paramLabel = "WHAT",
            description = "A machine's preset ('standwright presets' lists them), or cleat-wall.")
    private String what;

    @Option(names = "--width", paramLabel = "LENGTH", description = "Of the wall; for cleat-wall only.")
    private Optional<String> width;

    @Option(
            names = "--height",
            paramLabel = "LENGTH",
            description = "Of the wall, from the floor to the ceiling; for cleat-wall only.")
    private Optional<String> height;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The file to write.")
    private Path file;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            converter = UnitWord.class,
            description = "Unit that you measure in: mm, in or in/64. Without it, that of --width; else mm.")
    private Optional<Units> unit;

    @Option(names = "--quiet", description = "Say nothing but errors.")
    private boolean quiet;

    @Mixin
    private PresetsFolder presets;

    @Override
    public Integer call() {
        boolean wall = what.equals(FileKind.CLEAT_WALL.word());
        NewFile.write(file, wall ? wall() : stand());
        if (!quiet) {
            spec.commandLine()
                    .getOut()
                    .println("Written to " + file + ". Measure your " + (wall ? "wall" : "machine")
                            + ", then change what differs.");
        }
        return ExitCode.FINE;
    }

    private String stand() {
        if (width.isPresent() || height.isPresent()) {
            throw misused("--width and --height are those of a wall; a stand takes its size from its machine."
                    + " Leave them out, or ask for cleat-wall.");
        }
        return StartingFile.forMachine(presets.library(), what, unit.orElse(Units.MM));
    }

    private String wall() {
        var units = unit.orElseGet(() ->
                width.filter(NewCommand::isInInches).map(inches -> Units.INCH).orElse(Units.MM));
        double wide = length("--width", width, units);
        double high = length("--height", height, units);
        try {
            return StartingWall.text(units, wide, high);
        } catch (IllegalArgumentException refusal) {
            throw misused(refusal.getMessage());
        }
    }

    /** 12', 144", 12 ft, 144 in. */
    private static boolean isInInches(String length) {
        return length.matches(".*(['\"]|in|ft)\\s*");
    }

    private double length(String option, Optional<String> given, Units units) {
        var text = given.orElseThrow(
                () -> misused("a cleat-wall needs " + option + ", such as " + option + " '3600 mm'."));
        try {
            return Measure.LENGTH.parse(text, units.unitOf(Measure.LENGTH));
        } catch (QuantityException refusal) {
            throw misused(option + " '" + text + "' " + refusal.rule() + ". " + refusal.wayOut());
        }
    }

    private ParameterException misused(String message) {
        return new ParameterException(spec.commandLine(), message);
    }
}
