package org.standwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "presets",
        description = "Lists what there is to start from: stands, walls, machines, sheets, slides and other hardware.")
final class PresetsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private PresetsListCommand.Listing listing;

    @Override
    public Integer call() {
        return listing.print(spec.commandLine().getOut());
    }
}
