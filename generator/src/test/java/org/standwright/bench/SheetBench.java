package org.standwright.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.stream.LongStream;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.plan.SheetJob;

/** Prints sheets, bound, yield and milliseconds of processor time for random jobs of several sizes; means over some seeds. */
public final class SheetBench {
    private static final int[] SIZES = {20, 60, 200, 600};
    private static final int SEEDS = 5;

    private SheetBench() {}

    public static void main(String[] args) {
        SheetJob.random(0, 60).plan();
        System.out.printf(Locale.ROOT, "%6s %8s %8s %8s %10s%n", "parts", "sheets", "bound", "yield", "ms");
        for (int size : SIZES) {
            long start = processorTime();
            var plans = LongStream.range(1, 1 + SEEDS)
                    .mapToObj(seed -> SheetJob.random(seed, size).plan())
                    .toList();
            double ms = (processorTime() - start) / 1e6 / SEEDS;
            System.out.printf(
                    Locale.ROOT,
                    "%6d %8.1f %8.1f %8.3f %10.0f%n",
                    size,
                    plans.stream()
                            .mapToInt(plan -> plan.sheets().size())
                            .average()
                            .orElseThrow(),
                    plans.stream()
                            .mapToLong(plan -> plan.proof().least())
                            .average()
                            .orElseThrow(),
                    plans.stream().mapToDouble(MaterialPlan::yield).average().orElseThrow(),
                    ms);
        }
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
