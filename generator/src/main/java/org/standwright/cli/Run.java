package org.standwright.cli;

import java.io.PrintWriter;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.OutputException;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;

/** One run of the command line with its streams. Every failure ends here: as plain words and an exit code. */
final class Run {
    private final PrintWriter out;
    private final PrintWriter err;
    private final CommandLine commands;

    Run(PrintWriter out, PrintWriter err, Progress progress) {
        this.out = out;
        this.err = err;
        this.commands = StandwrightCommand.line(progress)
                .setOut(out)
                .setErr(err)
                .setParameterExceptionHandler((failure, args) -> misused(failure))
                .setExecutionExceptionHandler((failure, command, parsed) -> failed(failure));
    }

    /** Returns the exit code. */
    int run(String... args) {
        int code = execute(args);
        out.flush();
        err.flush();
        if (out.checkError()) {
            complain("the output could not be written to the end.");
            return ExitCode.NOT_WRITTEN;
        }
        return code;
    }

    private int execute(String... args) {
        try {
            return commands.execute(args);
        } catch (StackOverflowError | OutOfMemoryError | AssertionError mistake) {
            return unexpected(mistake);
        }
    }

    private int misused(ParameterException failure) {
        complain(failure.getMessage().replaceFirst("^Error: ", ""));
        var command = failure.getCommandLine().getCommandSpec().qualifiedName();
        err.println("'" + command + " --help' says how it is used.");
        return ExitCode.BAD_INPUT;
    }

    private int failed(Exception failure) {
        if (failure instanceof DesignFileException unusable) {
            unusable.problems().forEach(problem -> complain(problem.message()));
            return ExitCode.BAD_INPUT;
        }
        if (failure instanceof OutputException) {
            complain(failure.getMessage());
            return ExitCode.NOT_WRITTEN;
        }
        return unexpected(failure);
    }

    private int unexpected(Throwable mistake) {
        var trace = mistake.getStackTrace();
        complain("this should not have happened: " + mistake + (trace.length == 0 ? "" : " at " + trace[0]));
        err.println("Please report it with this line and the design file.");
        return ExitCode.UNEXPECTED;
    }

    private void complain(String message) {
        err.println("error: " + message);
    }
}
