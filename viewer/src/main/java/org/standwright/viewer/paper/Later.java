package org.standwright.viewer.paper;

import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;

/**
 * What comes of a value, worked out away from the screen's thread. The newest value wins: what comes of an older one is
 * dropped, and what was shown before stays until something newer is there.
 *
 * @param <T> the value
 * @param <R> what comes of it
 */
public final class Later<T, R> {
    private final Function<T, R> work;
    private final Executor executor;
    private final ReadOnlyObjectWrapper<Optional<R>> result =
            new ReadOnlyObjectWrapper<>(this, "result", Optional.empty());
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper(this, "working", false);
    private volatile Optional<T> wanted = Optional.empty();

    private Later(Function<T, R> work, Executor executor) {
        this.work = work;
        this.executor = executor;
    }

    /** @param work slow, and takes nothing but the value */
    public static <T, R> Later<T, R> of(ObservableValue<Optional<T>> value, Function<T, R> work) {
        return of(value, work, Executors.newSingleThreadExecutor(Later::quiet));
    }

    static <T, R> Later<T, R> of(ObservableValue<Optional<T>> value, Function<T, R> work, Executor executor) {
        var later = new Later<>(work, executor);
        value.subscribe(later::changed);
        return later;
    }

    private static Thread quiet(Runnable work) {
        var thread = new Thread(work, "drawing");
        thread.setDaemon(true);
        return thread;
    }

    /** Empty until the first is there, and when there is nothing to work out. */
    public ObservableValue<Optional<R>> result() {
        return result.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    private void changed(Optional<T> value) {
        wanted = value;
        working.set(value.isPresent());
        value.ifPresentOrElse(this::begin, () -> result.set(Optional.empty()));
    }

    private void begin(T value) {
        executor.execute(() -> {
            if (!isNewest(value)) {
                return;
            }
            try {
                var made = work.apply(value);
                Platform.runLater(() -> arrived(value, made));
            } catch (RuntimeException failure) {
                Platform.runLater(() -> failed(failure));
            }
        });
    }

    private boolean isNewest(T value) {
        return wanted.filter(newest -> newest == value).isPresent();
    }

    private void arrived(T value, R made) {
        if (isNewest(value)) {
            working.set(false);
            result.set(Optional.of(made));
        }
    }

    /** On the screen's thread, where what went wrong is shown. */
    private void failed(RuntimeException failure) {
        working.set(false);
        throw failure;
    }
}
