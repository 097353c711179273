package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.IntConsumer;
import javafx.application.Platform;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.viewer.document.DesignText;
import org.standwright.viewer.document.StateFolder;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Starts the viewer. Not an Application itself, so that it also starts from the class path. */
@Command(
        name = "standwright-viewer",
        description = "Shows and changes stands and walls of cleats.",
        mixinStandardHelpOptions = true,
        version = "0.1.0",
        exitCodeListHeading = "Exit codes:%n",
        exitCodeList = {"0:fine", "1:no screen, or no picture could be made", "2:wrong arguments"})
public final class Main implements Callable<Integer> {
    private static final int NOT_OPENED = 1;
    /** Ends what it has begun before the program ends. */
    private static final ExecutorService DISK = Executors.newSingleThreadExecutor();

    @Parameters(paramLabel = "DESIGN", arity = "0..1", description = "a design file; without it, the demo is shown")
    private Optional<Path> design = Optional.empty();

    @Option(names = "--snapshot", paramLabel = "FILE.png", description = "write a picture and exit")
    private Optional<Path> snapshot = Optional.empty();

    @Option(
            names = "--presets",
            paramLabel = "DIR",
            description = "folder of your own presets; they go before those that come with the program")
    private Optional<Path> presets = Optional.empty();

    private Main() {}

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new Main()).execute(arguments));
    }

    @Override
    public Integer call() {
        try {
            PresetLibrary.of(Path.of(""), presets);
            var state = StateFolder.ofUser();
            return open(setup(first(state), state));
        } catch (DesignFileException | IOException refusal) {
            System.err.println(refusal.getMessage());
            return NOT_OPENED;
        } catch (UnsupportedOperationException e) {
            System.err.println("There is no screen to open a window on: " + e.getMessage() + ".");
            return NOT_OPENED;
        }
    }

    /** What was asked for; else unsaved work of a run that was killed; else the demo. */
    private Opened first(Path state) throws IOException {
        if (design.isPresent()) {
            return Opened.fromFile(design.get(), read(design.get()));
        }
        return snapshot.isPresent() ? Demo.opened() : Keeper.left(state).orElseGet(Demo::opened);
    }

    private static String read(Path file) throws IOException {
        try {
            return DesignText.read(file);
        } catch (NoSuchFileException missing) {
            throw new IOException("'" + file + "' is not there. Give the path of a design file.", missing);
        }
    }

    private Setup setup(Opened first, Path state) {
        return new Setup(first, presets, state, Threads.ofApplication(), DISK, SystemDialogs::new);
    }

    private int open(Setup setup) {
        EarlyStart.begin(setup.first().text());
        var exitCode = new CompletableFuture<Integer>();
        Platform.startup(() -> start(new Window(setup), exitCode::complete));
        int code = exitCode.join();
        finishWriting();
        return code;
    }

    private static void finishWriting() {
        DISK.shutdown();
        try {
            DISK.awaitTermination(5, TimeUnit.SECONDS);
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void start(Window window, IntConsumer whenDone) {
        snapshot.ifPresentOrElse(file -> window.picture(file, whenDone), () -> window.show(whenDone));
    }
}
