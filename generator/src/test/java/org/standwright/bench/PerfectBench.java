package org.standwright.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import org.standwright.sheet.job.SawnSheet;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.search.Search;

/**
 * Saws sheets at random into pieces and prints how many are found again: laid on one sheet, without any waste.
 *
 * <pre>
 * PerfectBench [SHEETS=40] [SECONDS=5]
 * </pre>
 *
 * <p>So many sheets of each size, so many seconds of processor time for each at most, on one thread.
 */
public final class PerfectBench {
    private static final int[] SIZES = {10, 20, 40, 80};

    private PerfectBench() {}

    public static void main(String[] args) {
        int sheets = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        double seconds = args.length > 1 ? Double.parseDouble(args[1]) : 5;
        System.out.printf(Locale.ROOT, "%6s %10s %8s %14s%n", "pieces", "recovered", "share", "seconds a sheet");
        var pool = new ForkJoinPool(1);
        for (int size : SIZES) {
            pool.submit(() -> print(size, sheets, seconds)).join();
        }
        pool.shutdown();
    }

    private static void print(int size, int sheets, double seconds) {
        int recovered = 0;
        long start = processorTime();
        for (int seed = 0; seed < sheets; seed++) {
            long end = processorTime() + (long) (seconds * 1e9);
            var budget = Budget.until(() -> processorTime() > end, 0, Budget.SEED);
            var found = Search.run(SawnSheet.random(seed, size), 1, budget, better -> {});
            recovered += found.answers().get(0).cost() == 1 ? 1 : 0;
        }
        System.out.printf(
                Locale.ROOT,
                "%6d %10d %7.0f%% %14.2f%n",
                size,
                recovered,
                100.0 * recovered / sheets,
                (processorTime() - start) / 1e9 / sheets);
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
