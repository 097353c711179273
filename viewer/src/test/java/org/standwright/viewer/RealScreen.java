package org.standwright.viewer;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;

/** A display to open windows on, for tests that draw in 3D; where there is none, they are left out. */
public final class RealScreen {
    private static final int MOST_TRIES = 200;
    private static final int BETWEEN_TRIES = 25;

    private RealScreen() {}

    /** May be called again. */
    public static void start() {
        assumeTrue(isThere(), "there is no screen (DISPLAY is not set): nothing is tested on it");
        var started = new CompletableFuture<Void>();
        try {
            Platform.startup(() -> started.complete(null));
        } catch (IllegalStateException e) {
            Platform.runLater(() -> started.complete(null)); // another test has started it
        }
        started.join();
        Platform.setImplicitExit(false);
    }

    /** Does something on the screen's thread and waits for the outcome. */
    public static <T> T get(Callable<T> work) {
        var outcome = new CompletableFuture<T>();
        Platform.runLater(() -> {
            try {
                outcome.complete(work.call());
            } catch (Exception e) {
                outcome.completeExceptionally(e);
            }
        });
        return outcome.join();
    }

    public static void run(Runnable work) {
        get(() -> {
            work.run();
            return true;
        });
    }

    /** Waits until something is so, asked on the screen's thread; whether it came to be so in five seconds. */
    public static boolean becomes(BooleanSupplier wanted) throws InterruptedException {
        for (int i = 0; i < MOST_TRIES; i++) {
            if (get(wanted::getAsBoolean)) {
                return true;
            }
            Thread.sleep(BETWEEN_TRIES);
        }
        return false;
    }

    private static boolean isThere() {
        return !System.getProperty("os.name").startsWith("Linux") || System.getenv("DISPLAY") != null;
    }
}
