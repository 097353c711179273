package org.standwright.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

@Command(
        name = "standwright",
        scope = ScopeType.INHERIT,
        description = "Works out storage cabinets that carry workshop machines at the right height, and walls of French"
                + " cleats with holders for what hangs on them.",
        synopsisSubcommandLabel = "COMMAND",
        usageHelpAutoWidth = true,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:fine",
            "1:done, but a finding says not to build it like this",
            "2:the command, the design file or a preset cannot be used",
            "3:could not write; what was there before is kept",
            "70:a mistake in the program; please report it"
        })
final class StandwrightCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            scope = ScopeType.INHERIT,
            description = "Show this text.")
    private boolean help;

    private StandwrightCommand() {}

    static CommandLine line(Progress progress) {
        return new CommandLine(new StandwrightCommand())
                .addSubcommand(new MakeCommand(progress))
                .addSubcommand(new CheckCommand(progress))
                .addSubcommand(new SavingsCommand(progress))
                .addSubcommand(new CommandLine(new PresetsCommand())
                        .addSubcommand(new PresetsListCommand())
                        .addSubcommand(new PresetsShowCommand()))
                .addSubcommand(new NewCommand())
                .addSubcommand(new SchemaCommand());
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command was given; 'make' is the one to start with.");
    }
}
