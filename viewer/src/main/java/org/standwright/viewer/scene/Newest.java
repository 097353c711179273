package org.standwright.viewer.scene;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;

/**
 * Works things out away from the screen's thread, one at a time. Of those that wait only the newest is worked out; what
 * comes of each that is gets shown, so that a slider is followed while it moves.
 *
 * @param <T> what is asked
 * @param <R> what comes of it
 */
public final class Newest<T, R> {
    private final Function<T, R> work;
    private final Consumer<R> shown;
    private final Executor background;
    private final Executor screen;
    private final AtomicReference<Optional<T>> waiting = new AtomicReference<>(Optional.empty());

    /**
     * With a thread of its own.
     *
     * @param work slow, and takes nothing but what is asked
     * @param shown gets what came of it on the screen's thread
     */
    public Newest(Function<T, R> work, Consumer<R> shown) {
        this(work, shown, Executors.newSingleThreadExecutor(Newest::quiet), Platform::runLater);
    }

    Newest(Function<T, R> work, Consumer<R> shown, Executor background, Executor screen) {
        this.work = work;
        this.shown = shown;
        this.background = background;
        this.screen = screen;
    }

    public void ask(T wanted) {
        if (waiting.getAndSet(Optional.of(wanted)).isEmpty()) {
            background.execute(this::next);
        }
    }

    private void next() {
        try {
            waiting.getAndSet(Optional.empty()).map(work).ifPresent(made -> screen.execute(() -> shown.accept(made)));
        } catch (RuntimeException fault) {
            screen.execute(() -> {
                throw fault; // where faults of the program are shown
            });
        }
    }

    private static Thread quiet(Runnable work) {
        var thread = new Thread(work, "for the 3D view");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    }
}
