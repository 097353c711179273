package org.standwright.bench;

import java.io.IOException;
import java.util.Locale;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Prints every table of this package, one after the other. */
public final class Bench {
    private Bench() {}

    public static void main(String[] args) throws IOException, InterruptedException, RunnerException {
        MakeBench.printHead();
        MakeBench.print("planer-stand");
        MakeBench.print("drill-press-stand");
        System.out.println();
        table("design to assembly and cut list, warm, JMH: milliseconds (aim 5)", StandBenchmark.class);
        System.out.println();
        table("all rules, warm, JMH: milliseconds (aim 20)", CheckBenchmark.class);
        System.out.println();
        SolidBench.main(args);
        System.out.println("\nwalls of cleats without sheet plans");
        WallBench.main(args);
        System.out.println("\nsheet plans, random jobs on 2440 x 1220 mm");
        SheetBench.main(args);
    }

    private static void table(String title, Class<?> benchmark) throws RunnerException {
        System.out.println(title);
        System.out.printf("%-24s %-20s %8s %8s %8s%n", "what", "preset", "median", "p95", "max");
        var options = new OptionsBuilder()
                .include(benchmark.getName())
                .verbosity(VerboseMode.SILENT)
                .build();
        for (var result : new Runner(options).run()) {
            var times = result.getPrimaryResult().getStatistics();
            System.out.printf(
                    Locale.ROOT,
                    "%-24s %-20s %8.3f %8.3f %8.3f%n",
                    result.getPrimaryResult().getLabel(),
                    result.getParams().getParam("preset"),
                    times.getPercentile(50),
                    times.getPercentile(95),
                    times.getMax());
        }
    }
}
