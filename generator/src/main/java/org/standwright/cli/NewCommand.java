package org.standwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.standwright.file.StartingFile;
import org.standwright.make.NewFile;
import org.standwright.unit.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "new",
        description = "Writes a design file to start from: a stand for one machine. Never writes over a file.")
final class NewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "MACHINE", description = "A machine's preset; 'standwright presets' lists them.")
    private String machine;

    @Option(names = "--out", paramLabel = "FILE", required = true, description = "The file to write.")
    private Path file;

    @Option(
            names = "--unit",
            paramLabel = "UNIT",
            converter = UnitWord.class,
            description = "Unit that you measure in: mm, in or in/64. mm without it.")
    private Units unit = Units.MM;

    @Option(names = "--quiet", description = "Say nothing but errors.")
    private boolean quiet;

    @Mixin
    private PresetsFolder presets;

    @Override
    public Integer call() {
        NewFile.write(file, StartingFile.forMachine(presets.library(), machine, unit));
        if (!quiet) {
            spec.commandLine()
                    .getOut()
                    .println("Written to " + file + ". Measure your machine, then change what differs.");
        }
        return ExitCode.FINE;
    }
}
