package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import org.standwright.file.FileKind;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Stage;
import org.standwright.viewer.work.Threads;

/** Writes a picture of every pane, light and dark, in two sizes of the window, of a stand and a wall. */
final class Screenshots {
    private record Size(int width, int height) {}

    private static final List<Size> SIZES = List.of(new Size(1280, 800), new Size(1920, 1080));
    private static final int MOST_MILLISECONDS = 60_000;
    private static final int SETTLING = 700;

    private final Path folder;

    private Screenshots(Path folder) {
        this.folder = folder;
    }

    /** @param arguments the folder to write to */
    public static void main(String[] arguments) throws Exception {
        var folder = Files.createDirectories(Path.of(arguments[0]));
        var started = new CompletableFuture<Void>();
        Platform.startup(() -> started.complete(null));
        started.join();
        Platform.setImplicitExit(false);
        var screenshots = new Screenshots(folder);
        screenshots.all("stand", Demo.opened());
        screenshots.all("wall", Demo.preset(FileKind.CLEAT_WALL, "bench-wall"));
        System.exit(0);
    }

    private void all(String what, Opened design) throws Exception {
        var state = Files.createTempDirectory("standwright-screenshots");
        var window = get(() -> new Window(new Setup(
                design, Optional.empty(), state, Threads.ofApplication(), Runnable::run, SystemDialogs::new)));
        run(() -> window.show(code -> {}));
        for (var size : SIZES) {
            run(() -> window.resize(size.width(), size.height()));
            for (var look : Look.values()) {
                run(() -> window.appearance().lookProperty().set(look));
                panes(window, what + "-%s-" + look.word() + "-" + size.width() + "x" + size.height());
            }
        }
        run(window::close);
    }

    private void panes(Window window, String name) throws Exception {
        until(() -> window.desk().stageProperty().get() == Stage.DONE);
        for (var pane : get(() -> window.views().names())) {
            run(() -> window.views().show(pane));
            write(window, name, pane);
        }
        run(() -> window.views().show(Panes.SCENE));
        run(window::turnEditor);
        write(window, name, "text");
        run(window::turnEditor);
        run(() -> window.appearance().percentProperty().set(200));
        write(window, name, "text at 200 %");
        run(() -> window.appearance().percentProperty().set(100));
    }

    private void write(Window window, String name, String pane) throws Exception {
        Thread.sleep(SETTLING);
        var plain = pane.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("-$", "");
        var file = folder.resolve(String.format(Locale.ROOT, name, plain) + ".png");
        run(() -> {
            try {
                Picture.write(window.picture(), file);
            } catch (IOException failure) {
                throw new IllegalStateException(failure);
            }
        });
        System.out.println(file);
    }

    private static void until(BooleanSupplier wanted) throws Exception {
        long end = System.currentTimeMillis() + MOST_MILLISECONDS;
        while (!get(wanted::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                throw new IllegalStateException("the window has not come to rest");
            }
            Thread.sleep(50);
        }
    }

    private static void run(Runnable work) {
        get(() -> {
            work.run();
            return true;
        });
    }

    private static <T> T get(Callable<T> work) {
        var outcome = new CompletableFuture<T>();
        Platform.runLater(() -> {
            try {
                outcome.complete(work.call());
            } catch (Exception failure) {
                outcome.completeExceptionally(failure);
            }
        });
        return outcome.join();
    }
}
