package org.standwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.plan.Effort;
import org.standwright.sheet.plan.SheetJob;
import org.standwright.sheet.search.Search;

/**
 * Plans random jobs of several sizes and prints means over some seeds: milliseconds of processor time on one thread,
 * beside the aims; sheets, bound and yield of the usual plan; and the heap that the largest job takes.
 */
public final class SheetBench {
    private static final int SEEDS = 3;
    private static final List<Size> SIZES =
            List.of(new Size(20, 50), new Size(60, 100), new Size(200, 300), new Size(600, 1000), new Size(2000, 4000));

    /** @param aim for the first plan, ms */
    private record Size(int parts, int aim) {}

    private record Row(double first, double quick, double usual, double sheets, double bound, double yield) {
        static Row of(Size size) {
            var jobs = IntStream.rangeClosed(1, SEEDS)
                    .mapToObj(seed -> SheetJob.random(seed, size.parts()))
                    .toList();
            long start = processorTime();
            jobs.forEach(Row::first);
            long first = processorTime();
            jobs.forEach(job -> job.plan(Effort.QUICK));
            long quick = processorTime();
            var plans = jobs.stream().map(SheetJob::plan).toList();
            long usual = processorTime();
            return new Row(
                    (first - start) / 1e6 / SEEDS,
                    (quick - first) / 1e6 / SEEDS,
                    (usual - quick) / 1e6 / SEEDS,
                    plans.stream()
                            .mapToInt(plan -> plan.sheets().size())
                            .average()
                            .orElseThrow(),
                    plans.stream()
                            .mapToLong(plan -> plan.proof().least())
                            .average()
                            .orElseThrow(),
                    plans.stream().mapToDouble(MaterialPlan::yield).average().orElseThrow());
        }

        /** Up to the first answer of the search. */
        private static void first(SheetJob job) {
            var packing = job.packing();
            Search.run(packing, LowerBound.of(packing), Budget.rounds(0, 0), better -> {});
        }
    }

    private SheetBench() {}

    public static void main(String[] args) throws IOException {
        var pool = new ForkJoinPool(1);
        pool.submit(SheetBench::table).join();
        pool.shutdown();
        System.out.printf(
                Locale.ROOT,
                "2000 parts, peak of the heap: %s MB (aim 512)%n",
                FreshJvm.output(SheetHeap.class, "-Xmx512m"));
    }

    private static void table() {
        for (int seed = 0; seed < 10; seed++) {
            SheetJob.random(seed, 60).plan();
        }
        System.out.printf(
                "%6s %9s %9s %7s %9s %9s %8s %8s %6s %7s%n",
                "parts", "first ms", "quick ms", "aim", "growth", "usual ms", "sheets", "bound", "gap", "yield");
        double before = Double.NaN;
        for (var size : SIZES) {
            var row = Row.of(size);
            System.out.printf(
                    Locale.ROOT,
                    "%6d %9.1f %9.0f %7d %9s %9.0f %8.1f %8.1f %6.1f %7.3f%s%n",
                    size.parts(),
                    row.first(),
                    row.quick(),
                    size.aim(),
                    Double.isNaN(before) ? "" : String.format(Locale.ROOT, "x %.1f", row.quick() / before),
                    row.usual(),
                    row.sheets(),
                    row.bound(),
                    row.sheets() - row.bound(),
                    row.yield(),
                    row.quick() <= size.aim() ? "" : "  missed");
            before = row.quick();
        }
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
