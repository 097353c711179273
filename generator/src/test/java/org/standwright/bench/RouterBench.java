package org.standwright.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.Presets;
import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RouterPlan;
import org.standwright.router.plan.RouterPlanner;
import org.standwright.router.plan.Routers;
import org.standwright.sheet.SheetPlan;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.ImpossiblePlanException;
import org.standwright.sheet.plan.SheetPlanner;

/**
 * Boards of every preset's saw plan and router plan, what share of the boards becomes parts, and how long both take: the
 * median of some runs, milliseconds of processor time on one thread, warm.
 */
public final class RouterBench {
    private static final int RUNS = 5;

    private RouterBench() {}

    public static void main(String[] args) {
        System.out.printf(
                "%-28s %-24s %5s %6s %7s %7s %8s %8s%n",
                "preset", "material", "saw", "router", "saw", "router", "saw", "router");
        Stream.concat(Presets.stands().map(StandBuilder::build), Presets.walls().map(WallBuilder::build))
                .forEach(RouterBench::row);
    }

    private static void row(Furniture furniture) {
        var cutList = CutList.of(furniture);
        var stock = Stock.of(furniture.design());
        var router = Routers.usual();
        var sawn = SheetPlanner.plan(stock, cutList);
        RouterPlan routed;
        try {
            routed = RouterPlanner.plan(stock, cutList, router);
        } catch (ImpossiblePlanException e) {
            System.out.println(furniture.design().name() + ": " + e.getMessage());
            return;
        }
        double saw = millis(() -> SheetPlanner.plan(stock, cutList));
        double free = millis(() -> RouterPlanner.plan(stock, cutList, router));
        for (int i = 0; i < routed.materials().size(); i++) {
            System.out.printf(
                    Locale.ROOT,
                    "%-28s %-24s %5d %6d %6.1f%% %6.1f%% %5.0f ms %5.0f ms%n",
                    i == 0 ? furniture.design().name() : "",
                    sawn.materials().get(i).material().name(),
                    sawn.materials().get(i).sheets().size(),
                    routed.materials().get(i).sheets().size(),
                    100 * sawnShare(sawn, i),
                    100 * routedShare(routed, i),
                    saw,
                    free);
        }
    }

    private static double millis(Runnable plan) {
        var pool = new ForkJoinPool(1);
        try {
            return pool.submit(() -> DoubleStream.generate(() -> once(plan))
                            .limit(RUNS)
                            .sorted()
                            .skip(RUNS / 2)
                            .findFirst()
                            .orElseThrow())
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    private static double once(Runnable plan) {
        long start = processorTime();
        plan.run();
        return (processorTime() - start) / 1e6;
    }

    private static long processorTime() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static double sawnShare(SheetPlan plan, int material) {
        return plan.materials().get(material).yield();
    }

    private static double routedShare(RouterPlan plan, int material) {
        double parts = 0;
        double boards = 0;
        for (var sheet : plan.materials().get(material).sheets()) {
            parts += sheet.pieces().stream()
                    .map(RoutedPiece::outline)
                    .mapToDouble(outline -> outline.area())
                    .sum();
            boards += sheet.from().length() * sheet.from().width();
        }
        return parts / boards;
    }
}
