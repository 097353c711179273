package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Starts the viewer. Not an Application itself, so that it also starts from the class path. */
@Command(
        name = "standwright-viewer",
        description = "Shows a stand in 3D.",
        mixinStandardHelpOptions = true,
        version = "0.1.0",
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:fine", "1:no screen, or no picture could be made", "2:wrong arguments"})
public final class Main implements Callable<Integer> {
    private static final int NO_SCREEN = 1;

    @Parameters(paramLabel = "DESIGN", arity = "0..1", description = "a design file; without it, the demo is shown")
    private Optional<Path> design = Optional.empty();

    @Option(names = "--snapshot", paramLabel = "FILE.png", description = "write a picture and exit")
    private Optional<Path> snapshot = Optional.empty();

    private Main() {}

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }

    @Override
    public Integer call() {
        var exitCode = new CompletableFuture<Integer>();
        try {
            Platform.startup(() -> start(exitCode::complete));
        } catch (UnsupportedOperationException e) {
            System.err.println("There is no screen to open a window on: " + e.getMessage() + ".");
            return NO_SCREEN;
        }
        return exitCode.join();
    }

    private void start(IntConsumer whenDone) {
        var window = new Window(design);
        snapshot.ifPresentOrElse(file -> window.picture(file, whenDone), () -> window.show(whenDone));
    }
}
