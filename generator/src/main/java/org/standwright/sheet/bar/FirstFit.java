package org.standwright.sheet.bar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.sheet.cover.Pattern;

/** Plans bar by bar: fills each with what still fits in a given order, then takes the cheapest bar that does. */
final class FirstFit {
    private final BarJob job;

    FirstFit(BarJob job) {
        this.job = job;
    }

    /**
     * A plan whose bars are each filled from types in this order.
     *
     * @param kind of bar to fill while there are any; others after it, the cheapest for their length first
     * @return empty if the bars run out
     */
    Optional<List<Pattern>> plan(int[] order, int kind) {
        int[] left = job.counts().clone();
        int[] available = job.available().clone();
        var plan = new ArrayList<Pattern>();
        while (IntStream.of(left).anyMatch(count -> count > 0)) {
            var next = next(order, kind, left, available);
            if (next.isEmpty()) {
                return Optional.empty();
            }
            plan.add(next.get());
            available[next.get().kind()]--;
            for (int type = 0; type < left.length; type++) {
                left[type] -= next.get().counts()[type];
            }
        }
        return Optional.of(plan);
    }

    private Optional<Pattern> next(int[] order, int kind, int[] left, int[] available) {
        for (int tried : kinds(kind)) {
            if (available[tried] > 0) {
                int[] pieces = filled(order, job.bars()[tried], left);
                if (IntStream.of(pieces).anyMatch(count -> count > 0)) {
                    int cheapest = cheapest(job.taken(pieces), tried, available);
                    return Optional.of(new Pattern(pieces, job.costs()[cheapest], cheapest));
                }
            }
        }
        return Optional.empty();
    }

    private int[] kinds(int first) {
        var others = IntStream.range(0, job.bars().length)
                .filter(kind -> kind != first)
                .boxed()
                .sorted((a, b) -> Double.compare(
                        (double) job.costs()[a] / job.bars()[a], (double) job.costs()[b] / job.bars()[b]))
                .mapToInt(kind -> kind);
        return IntStream.concat(IntStream.of(first), others).toArray();
    }

    /** Types in this order, of each as many as fit. */
    int[] filled(int[] order, int bar, int[] left) {
        int[] pieces = new int[left.length];
        int room = bar;
        for (int type : order) {
            pieces[type] = Math.min(left[type], room / job.lengths()[type]);
            room -= pieces[type] * job.lengths()[type];
        }
        return pieces;
    }

    private int cheapest(long taken, int kind, int[] available) {
        int cheapest = kind;
        for (int other = 0; other < job.bars().length; other++) {
            if (available[other] > 0 && job.bars()[other] >= taken && job.costs()[other] < job.costs()[cheapest]) {
                cheapest = other;
            }
        }
        return cheapest;
    }
}
