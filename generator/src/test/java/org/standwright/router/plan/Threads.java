package org.standwright.router.plan;

import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;

/** Runs work in a pool of so many threads. */
final class Threads {
    private Threads() {}

    static <T> T call(int threads, Callable<T> work) {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.submit(work).join();
        } finally {
            pool.shutdown();
        }
    }
}
