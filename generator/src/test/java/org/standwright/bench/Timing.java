package org.standwright.bench;

import java.util.Arrays;
import java.util.List;

/** How long the same work took, run after run, ms. */
public record Timing(double median, double p95, double least) {
    /** Of these runs, one at least. */
    public static Timing of(List<Double> millis) {
        var sorted = millis.stream().mapToDouble(ms -> ms).sorted().toArray();
        return new Timing(sorted[sorted.length / 2], sorted[(int) Math.ceil(0.95 * sorted.length) - 1], sorted[0]);
    }

    /** Runs {@code work} for {@code forMillis}, {@code fewest} times at least, and tells what each run took. */
    public static List<Double> runs(Runnable work, int fewest, int forMillis) {
        var millis = new double[fewest];
        int count = 0;
        long end = System.nanoTime() + forMillis * 1_000_000L;
        while (count < fewest || System.nanoTime() < end) {
            long start = System.nanoTime();
            work.run();
            if (count == millis.length) {
                millis = Arrays.copyOf(millis, 2 * count);
            }
            millis[count++] = (System.nanoTime() - start) / 1e6;
        }
        return Arrays.stream(millis, 0, count).boxed().toList();
    }

    /** After a second of the same work, or one run of it, whichever takes longer. */
    public static Timing warm(Runnable work, int fewest, int forMillis) {
        runs(work, 1, 1000);
        return of(runs(work, fewest, forMillis));
    }
}
