package org.standwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.BinInstance;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.search.Search;

/**
 * Packs all bin packing instances of a folder and prints sums of bins beside published ones.
 *
 * <pre>
 * PackingBench FOLDER [seconds=1,5] [seeds=3] [variants=R,O] [threads=1] [kerf=0] [results=FILE]
 * </pre>
 *
 * <p>Seconds are processor time where there is one thread, so that whatever else the machine does changes little; with
 * more threads they are those of the clock. An instance stops where its bound is met. {@code variants}: R items may be
 * turned, O they may not. {@code kerf} is in hundredths of the bin's side. Results are appended to the file and read
 * from it when the same is asked again, so that an interrupted run goes on.
 */
public final class PackingBench {
    /**
     * Sums of bins over 50 instances, guillotine cuts, from tables 1 and 2 of T. Gardeyn, T. Wauters, EJOR 2021, which
     * collect the best values of each paper; GDRR is theirs, 8 threads for 600 s an instance.
     */
    private static final Map<String, Map<Integer, Integer>> PUBLISHED = published();

    private static final int SCALE = 100;

    private final List<BinInstance> instances;
    private final int threads;
    private final int kerf;
    private final Map<String, Result> known = new HashMap<>();
    private final Path results;

    private PackingBench(List<BinInstance> instances, int threads, int kerf, Path results) {
        this.instances = instances;
        this.threads = threads;
        this.kerf = kerf;
        this.results = results;
    }

    /** One instance, one variant, one seed, so many seconds. */
    private record Result(int bins, long bound, double seconds) {}

    public static void main(String[] args) throws IOException {
        var options = new HashMap<String, String>();
        for (int i = 1; i < args.length; i++) {
            var parts = args[i].split("=", 2);
            options.put(parts[0], parts[1]);
        }
        var bench = new PackingBench(
                BinInstance.inFolder(Path.of(args[0])),
                Integer.parseInt(options.getOrDefault("threads", "1")),
                Integer.parseInt(options.getOrDefault("kerf", "0")),
                Path.of(options.getOrDefault("results", "packing-results.tsv")));
        bench.recall();
        for (var variant : options.getOrDefault("variants", "R,O").split(",")) {
            for (var seconds : options.getOrDefault("seconds", "1,5").split(",")) {
                bench.table(variant, Double.parseDouble(seconds), Integer.parseInt(options.getOrDefault("seeds", "3")));
            }
        }
    }

    private void recall() throws IOException {
        if (Files.exists(results)) {
            for (var line : Files.readAllLines(results, StandardCharsets.UTF_8)) {
                var words = line.split("\t");
                known.put(
                        words[0],
                        new Result(Integer.parseInt(words[1]), Long.parseLong(words[2]), Double.parseDouble(words[3])));
            }
        }
    }

    private void table(String variant, double seconds, int seeds) throws IOException {
        var sums = new TreeMap<Integer, double[]>();
        for (var instance : instances) {
            var sum = sums.computeIfAbsent(instance.kind(), none -> new double[4]);
            for (int seed = 1; seed <= seeds; seed++) {
                var result = result(instance, variant, seconds, seed);
                sum[0] += (double) result.bins() / seeds;
                sum[1] += (double) result.bound() / seeds;
                sum[2] += (result.bins() == result.bound() ? 1.0 : 0) / seeds;
                sum[3] += result.seconds() / seeds;
            }
        }
        print(variant, seconds, seeds, sums);
    }

    private void print(String variant, double seconds, int seeds, Map<Integer, double[]> sums) {
        System.out.printf(
                Locale.ROOT,
                "%n%s, guillotine, %s s an instance at most, %d thread%s, mean of %d seed%s, kerf %d %% of the bin%n",
                variant.equals("R") ? "with rotation" : "oriented",
                seconds,
                threads,
                threads == 1 ? "" : "s",
                seeds,
                seeds == 1 ? "" : "s",
                kerf);
        var published = new ArrayList<>(PUBLISHED.keySet());
        published.removeIf(name -> kerf > 0 || !name.startsWith(variant));
        System.out.printf("%6s %9s %8s %8s %9s", "class", "bins", "bound", "proved", "seconds");
        published.forEach(name -> System.out.printf(" %10s", name.substring(2)));
        System.out.println();
        var total = new double[4];
        sums.forEach((kind, sum) -> {
            for (int i = 0; i < total.length; i++) {
                total[i] += sum[i];
            }
            row(String.valueOf(kind), sum);
            published.forEach(
                    name -> System.out.printf(" %10s", PUBLISHED.get(name).getOrDefault(kind, 0)));
            System.out.println();
        });
        row("sum", total);
        published.forEach(name -> System.out.printf(
                " %10d",
                sums.keySet().stream()
                        .mapToInt(kind -> PUBLISHED.get(name).getOrDefault(kind, 0))
                        .sum()));
        System.out.println();
    }

    private static void row(String name, double[] sum) {
        System.out.printf(Locale.ROOT, "%6s %9.1f %8.1f %8.1f %9.1f", name, sum[0], sum[1], sum[2], sum[3]);
    }

    private Result result(BinInstance instance, String variant, double seconds, int seed) throws IOException {
        var key = String.join(
                " ", instance.name(), variant, "s " + seconds, "seed " + seed, "threads " + threads, "kerf " + kerf);
        var found = known.get(key);
        if (found == null) {
            int scale = kerf == 0 ? 1 : SCALE;
            found = pack(
                    instance.job(variant.equals("R"), kerf * instance.width() * scale / 100, scale), seconds, seed);
            known.put(key, found);
            var line =
                    String.format(Locale.ROOT, "%s\t%d\t%d\t%.2f%n", key, found.bins(), found.bound(), found.seconds());
            Files.writeString(results, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        }
        return found;
    }

    private Result pack(PackingJob job, double seconds, int seed) {
        var pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> timed(job, seconds, seed)).join();
        } finally {
            pool.shutdown();
        }
    }

    private Result timed(PackingJob job, double seconds, int seed) {
        long start = now();
        long end = start + (long) (seconds * 1e9);
        long bound = LowerBound.of(job);
        var budget = Budget.until(() -> now() > end, 0, 1000L * seed);
        var found = Search.run(job, bound, budget, better -> {});
        return new Result((int) found.answers().get(0).cost(), found.bound(), (now() - start) / 1e9);
    }

    private long now() {
        return threads == 1 ? ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() : System.nanoTime();
    }

    private static Map<String, Map<Integer, Integer>> published() {
        var published = new LinkedHashMap<String, Map<Integer, Integer>>();
        published.put("R CHBP 2011", Map.of(1, 975, 3, 687, 5, 872, 7, 770, 9, 2119));
        published.put("R CFIH 2013", Map.of(1, 975, 3, 686, 5, 873, 7, 781, 9, 2119));
        published.put("R SVC 2015", Map.of(1, 973, 3, 681, 5, 868, 7, 761, 9, 2119));
        published.put("R HHTB 2018", Map.of(1, 972, 3, 675, 5, 861, 7, 753, 9, 2119));
        published.put("R GDRR 2021", Map.of(1, 972, 3, 675, 5, 862, 7, 756, 9, 2119));
        published.put("O CHBP 2011", Map.of(1, 1002, 3, 715, 5, 904, 7, 835, 9, 2132));
        published.put("O CFIH 2013", Map.of(1, 1004, 3, 711, 5, 906, 7, 838, 9, 2130));
        published.put("O ENH 2017", Map.of(1, 997, 3, 705, 5, 899, 7, 834, 9, 2130));
        published.put("O HHTB 2018", Map.of(1, 997, 3, 697, 5, 893, 7, 826, 9, 2130));
        published.put("O GDRR 2021", Map.of(1, 997, 3, 697, 5, 893, 7, 825, 9, 2130));
        return published;
    }
}
