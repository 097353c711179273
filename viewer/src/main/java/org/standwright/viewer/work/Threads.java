package org.standwright.viewer.work;

import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinWorkerThread;
import javafx.application.Platform;

/**
 * Where work is done.
 *
 * @param screen takes what changes properties
 * @param fast reads and builds, one job after the other
 * @param slow checks and plans, one job after the other
 */
public record Threads(Executor screen, Executor fast, Executor slow) {
    /** Of a running application; the threads end with it. */
    public static Threads ofApplication() {
        return new Threads(Platform::runLater, oneAfterTheOther(), slowPool());
    }

    /** All at once on the calling thread, for tests. */
    public static Threads none() {
        return new Threads(Runnable::run, Runnable::run, Runnable::run);
    }

    private static Executor oneAfterTheOther() {
        return Executors.newSingleThreadExecutor(work -> {
            var thread = new Thread(work, "reads and builds");
            thread.setDaemon(true);
            return thread;
        });
    }

    /** A pool of its own: the sheet planner's lanes run in the caller's, and solids shall not wait for them. */
    private static Executor slowPool() {
        return new ForkJoinPool(1, pool -> new SlowThread(pool), null, true);
    }

    private static final class SlowThread extends ForkJoinWorkerThread {
        SlowThread(ForkJoinPool pool) {
            super(pool);
            setName("checks and plans");
            setPriority(MIN_PRIORITY);
        }
    }
}
