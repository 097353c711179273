package org.standwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(name = "show", description = "Prints a preset's file.")
final class PresetsShowCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PresetsFolder presets;

    @Parameters(
            paramLabel = "KIND/NAME",
            description =
                    "As 'presets list' writes it: machine/thickness-planer; the name alone when only one is called so.")
    private String name;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(presets.library().show(name));
        return ExitCode.FINE;
    }
}
