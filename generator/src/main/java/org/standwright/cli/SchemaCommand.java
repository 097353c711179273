package org.standwright.cli;

import java.util.concurrent.Callable;
import org.standwright.file.DesignFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "schema",
        description = "Prints the JSON Schema (draft 2020-12) of design files and presets, for editors that check while"
                + " you write.")
final class SchemaCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(DesignFiles.schema());
        return ExitCode.FINE;
    }
}
