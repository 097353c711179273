package org.standwright.bench;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ForkJoinPool;
import org.standwright.router.plan.places.FilledBoard;
import org.standwright.router.plan.places.PlaceSearch;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.job.BinInstance;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;

/**
 * Packs public bin packing instances without cuts from edge to edge and prints sums of bins beside published ones.
 *
 * <pre>
 * PlaceBench FOLDER seconds [instances of each size, 10] [R,O]
 * </pre>
 *
 * <p>Seconds of processor time of one thread for each instance; one stops where its bound is met.
 */
public final class PlaceBench {
    /**
     * Sums of bins over 50 instances, any places, as Parreno et al. 2010, Blum and Schmid 2013, Goncalves and Resende 2013
     * publish them, the best of the three.
     */
    private static final Map<String, Map<Integer, Integer>> PUBLISHED = Map.of(
            "O", Map.of(1, 997, 3, 696, 5, 892, 7, 827, 9, 2130), "R", Map.of(1, 972, 3, 675, 5, 861, 7, 758, 9, 2119));

    private PlaceBench() {}

    public static void main(String[] args) throws IOException {
        var instances = BinInstance.inFolder(Path.of(args[0]));
        double seconds = Double.parseDouble(args[1]);
        int each = args.length > 2 ? Integer.parseInt(args[2]) : 10;
        for (var variant : (args.length > 3 ? args[3] : "R,O").split(",")) {
            var few = instances.stream().filter(one -> one.number() <= each).toList();
            table(few, variant, seconds);
        }
    }

    private static void table(List<BinInstance> instances, String variant, double seconds) {
        var sums = new TreeMap<Integer, long[]>();
        for (var instance : instances) {
            var sum = sums.computeIfAbsent(instance.kind(), none -> new long[2]);
            var job = instance.job(variant.equals("R"), 0, 1);
            long bound = LowerBound.of(job);
            sum[0] += bins(job, bound, seconds);
            sum[1] += bound;
        }
        System.out.printf(Locale.ROOT, "%n%s|F, %s s an instance, one thread%n", variant, seconds);
        System.out.printf("%6s %6s %6s %10s%n", "class", "bins", "bound", "published");
        var total = new long[3];
        sums.forEach((kind, sum) -> {
            int published = PUBLISHED.get(variant).getOrDefault(kind, 0);
            System.out.printf("%6d %6d %6d %10d%n", kind, sum[0], sum[1], published);
            total[0] += sum[0];
            total[1] += sum[1];
            total[2] += published;
        });
        System.out.printf("%6s %6d %6d %10d%n", "sum", total[0], total[1], total[2]);
    }

    private static long bins(PackingJob job, long bound, double seconds) {
        var pool = new ForkJoinPool(1);
        try {
            return pool.submit(() -> {
                        long end = now() + (long) (seconds * 1e9);
                        var budget = Budget.until(() -> now() > end, 0, 1);
                        return PlaceSearch.run(job, List.<FilledBoard>of(), bound, budget)
                                .cost();
                    })
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    private static long now() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
