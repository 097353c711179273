package org.standwright.sheet.bar;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.standwright.sheet.bound.ColumnGeneration;
import org.standwright.sheet.bound.LowerBound;
import org.standwright.sheet.cover.Pattern;
import org.standwright.sheet.cover.PatternCover;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutTree;

/**
 * A plan by filling bars one by one in many orders, then by choosing the best from all patterns met and those of the
 * linear program, whose bound is often the cost of the plan.
 */
final class BarSearch {
    private static final int MOST_ORDERS = 200;

    /** Types times pieces times orders. */
    private static final long WORK_OF_ORDERS = 20_000_000;

    /** With more types, choosing from patterns takes too long, and bars filled in order waste little. */
    private static final int MOST_TYPES = 300;

    private static final int MOST_PATTERNS = 4000;
    private static final int MOST_NODES = 400;
    private static final long WORK = 200_000_000;
    private static final long SEED = 1;

    private final BarJob job;
    private final Map<List<Integer>, Pattern> pool = new LinkedHashMap<>();
    private Optional<List<Pattern>> best = Optional.empty();
    private long cost = Long.MAX_VALUE;
    private long bound;

    BarSearch(BarJob job) {
        this.job = job;
    }

    /** Bars of the cheapest plan met; empty if there are not enough bars for any. */
    Optional<List<Pattern>> plan() {
        var boards = job.asBoards();
        bound = LowerBound.of(boards);
        tryOrders();
        if (cost > bound && job.lengths().length <= MOST_TYPES) {
            var generation = new ColumnGeneration(boards, cost);
            bound = Math.max(bound, generation.improve(WORK, () -> false));
            generation.patterns().forEach(this::add);
            if (cost > bound) {
                cover();
            }
        }
        return best;
    }

    /** Cost that no plan stays below. */
    long bound() {
        return bound;
    }

    private void tryOrders() {
        var random = new SplittableRandom(SEED);
        var firstFit = new FirstFit(job);
        int[] order = IntStream.range(0, job.lengths().length).toArray();
        long each = (long) order.length * IntStream.of(job.counts()).sum();
        long orders = Math.max(1, Math.min(MOST_ORDERS, WORK_OF_ORDERS / each));
        for (int i = 0; i < orders && cost > bound; i++) {
            for (int kind = 0; kind < job.bars().length; kind++) {
                firstFit.plan(order, kind).ifPresent(this::consider);
            }
            order = IntStream.range(0, order.length).toArray();
            for (int swaps = random.nextInt(1, order.length + 1); swaps > 0; swaps--) {
                int one = random.nextInt(order.length);
                int other = random.nextInt(order.length);
                int held = order[one];
                order[one] = order[other];
                order[other] = held;
            }
        }
    }

    private void consider(List<Pattern> plan) {
        plan.forEach(this::add);
        long its = plan.stream().mapToLong(Pattern::cost).sum();
        if (its < cost) {
            cost = its;
            best = Optional.of(plan);
        }
    }

    private void add(CutTree tree) {
        int[] pieces = new int[job.lengths().length];
        count(tree.root(), pieces);
        add(new Pattern(pieces, job.costs()[tree.kind()], tree.kind()));
    }

    private void add(Pattern pattern) {
        if (pool.size() < MOST_PATTERNS && job.lengths().length <= MOST_TYPES) {
            var key = new ArrayList<>(Arrays.stream(pattern.counts()).boxed().toList());
            key.add(pattern.kind());
            pool.putIfAbsent(key, pattern);
        }
    }

    private static void count(CutNode node, int[] pieces) {
        if (node instanceof CutNode.Piece piece) {
            pieces[piece.type()]++;
        } else if (node instanceof CutNode.Split split) {
            split.nodes().forEach(inner -> count(inner, pieces));
        }
    }

    private void cover() {
        var patterns = List.copyOf(pool.values());
        long below = best.isPresent()
                ? cost
                : 1
                        + IntStream.range(0, job.bars().length)
                                        .mapToLong(kind -> job.costs()[kind])
                                        .max()
                                        .orElseThrow()
                                * IntStream.of(job.counts()).asLongStream().sum();
        PatternCover.cheaper(patterns, job.counts(), job.available(), below, MOST_NODES)
                .ifPresent(uses -> best = Optional.of(withoutSurplus(patterns, uses)));
    }

    private List<Pattern> withoutSurplus(List<Pattern> patterns, int[] uses) {
        int[] left = job.counts().clone();
        var plan = new ArrayList<Pattern>();
        for (int j = 0; j < uses.length; j++) {
            for (int use = 0; use < uses[j]; use++) {
                int[] pieces = patterns.get(j).counts().clone();
                for (int type = 0; type < pieces.length; type++) {
                    pieces[type] = Math.min(pieces[type], left[type]);
                    left[type] -= pieces[type];
                }
                plan.add(new Pattern(
                        pieces, patterns.get(j).cost(), patterns.get(j).kind()));
            }
        }
        plan.removeIf(pattern -> job.taken(pattern.counts()) == 0);
        return plan;
    }
}
