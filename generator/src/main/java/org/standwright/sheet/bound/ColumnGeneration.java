package org.standwright.sheet.bound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.standwright.sheet.job.CutNode;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * A cost that no plan with cuts from edge to edge stays below, better the longer it works, and good patterns on the
 * way: prices of the pieces from a linear program over patterns, and the best pattern for these prices in turn (P.
 * Gilmore, R. Gomory, A linear programming approach to the cutting stock problem, 1961). At any moment the prices prove
 * a bound: pieces worth so much need boards that together hold so much (A. Farley, A note on bounding a class of linear
 * programming problems, 1990). Prices move towards the best ones met so far, which saves rounds (P. Wentges, 1997).
 *
 * <p>Sizes with too many sums are rounded down to a coarse grid first and to finer ones later. The same calls with the
 * same work give the same answers. Stages and longest cuts of the saw are not looked at: the bound holds with them,
 * the patterns may not.
 */
public final class ColumnGeneration {
    /** Grid steps of the board's longer side, level by level. */
    private static final int[] STEPS = {120, 300, 700, 1500};

    /** Share of the best prices met so far in those tried next. */
    private static final double STEADY = 0.6;

    private static final double TOLERANCE = 1e-7;
    private static final int MOST_PATTERNS = 5000;

    /** With more types the linear program would take too long, and the area says nearly as much. */
    private static final int MOST_TYPES = 400;

    private final PackingJob job;
    private final long target;
    private final StockCost stock;
    private final int[] counts;
    private final List<CutTree> patterns = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();
    private Level level;
    private int fineness;
    /** Prices of the types that proved most. */
    private double[] best;

    private double mostInParts;
    private double steady = 1;
    private long bound;
    private long spent;
    private boolean done;

    /**
     * @param job whose pieces all fit some kind of board
     * @param target a bound that is enough, such as the cost of a plan at hand
     */
    public ColumnGeneration(PackingJob job, long target) {
        this.job = job;
        this.target = target;
        stock = new StockCost(job.kinds());
        counts = job.types().stream().mapToInt(PieceType::count).toArray();
        double[] areas = job.types().stream().mapToDouble(PieceType::area).toArray();
        best = areas;
        done = target <= 0 || job.types().size() > MOST_TYPES;
    }

    /** Cost that no plan stays below. */
    public long bound() {
        return bound;
    }

    /** Whether more work would prove no more: the target is reached, or the argument is at its end. */
    public boolean isDone() {
        return done;
    }

    /** Work so far, counted as {@link #improve} counts it. */
    public long spent() {
        return spent;
    }

    /** Patterns met, different ones, none with more pieces than there are. */
    public List<CutTree> patterns() {
        return List.copyOf(patterns);
    }

    /**
     * Goes on, for one round at least unless it is done.
     *
     * @param work additions in the tables, about as many as a processor does in as many nanoseconds
     * @param stop asked between rounds
     * @return the bound
     */
    public long improve(long work, BooleanSupplier stop) {
        long most = spent + work;
        do {
            if (done) {
                return bound;
            }
            if (level == null) {
                enter();
            }
            spent += level.work();
            round();
        } while (spent < most && !stop.getAsBoolean());
        return bound;
    }

    private void enter() {
        level = new Level(job, STEPS[fineness]);
        patterns.forEach(tree -> level.add(tree.kind(), pieces(tree.root())));
        level.solve();
        steady = 1;
    }

    private void round() {
        double[] prices = level.prices();
        double[] tried = new double[counts.length];
        for (int type = 0; type < tried.length; type++) {
            tried[type] = Math.max(0, steady * best[type] + (1 - steady) * prices[type]);
        }
        prove(tried);
        boolean added = addPatterns(prices);
        if (added) {
            level.solve();
        }
        boolean atItsEnd = !added && steady == 0 || level.isCovered() && bound >= stock.roundedUp(level.cost());
        steady = added ? STEADY : 0;
        if (bound >= target) {
            done = true;
        } else if (atItsEnd) {
            finish();
        }
    }

    private void finish() {
        fineness++;
        done = level.isExact() || fineness == STEPS.length;
        level = null;
    }

    /** Fills the tables with these prices and draws the bound from them. */
    private void prove(double[] tried) {
        int kinds = job.kinds().size();
        double scale = IntStream.range(0, kinds)
                .mapToDouble(kind -> level.knapsack(kind).scale(tried))
                .min()
                .orElseThrow();
        double[] holds = new double[kinds];
        long[] seen = new long[counts.length];
        Arrays.fill(seen, Long.MAX_VALUE);
        for (int kind = 0; kind < kinds; kind++) {
            int[] values = level.knapsack(kind).scaled(tried, scale);
            holds[kind] = level.knapsack(kind).fill(values);
            for (int type = 0; type < values.length; type++) {
                seen[type] = Math.min(seen[type], values[type]);
            }
        }
        double total = 0;
        for (int type = 0; type < counts.length; type++) {
            total += (double) seen[type] * counts[type];
        }
        double inParts = stock.inParts(total, holds);
        if (inParts > mostInParts || bound == 0) {
            mostInParts = inParts;
            bound = Math.max(bound, stock.least(total, holds));
            best = steadied(tried, holds, scale);
        }
    }

    /** Prices at which no board that there is no end of holds more than it costs. */
    private double[] steadied(double[] tried, double[] holds, double scale) {
        double factor = IntStream.range(0, holds.length)
                .filter(kind -> job.kinds().get(kind).count() >= job.pieceCount() && holds[kind] > 0)
                .mapToDouble(kind -> job.kinds().get(kind).cost() / (holds[kind] / scale))
                .min()
                .orElse(1);
        return Arrays.stream(tried).map(price -> price * factor).toArray();
    }

    private boolean addPatterns(double[] prices) {
        boolean added = false;
        for (int kind = 0; kind < job.kinds().size(); kind++) {
            var knapsack = level.knapsack(kind);
            int[] pieces = knapsack.counts();
            var column = level.column(kind, pieces);
            if (column.reducedCost(prices) < -TOLERANCE * Math.max(1, column.cost())) {
                level.add(kind, pieces);
                added = true;
            }
            var tree = new CutTree(kind, knapsack.pattern(counts));
            int[] cut = pieces(tree.root());
            if (remember(tree, cut) && !Arrays.equals(cut, pieces)) {
                level.add(kind, cut);
            }
        }
        return added;
    }

    private boolean remember(CutTree tree, int[] pieces) {
        var key = new ArrayList<>(Arrays.stream(pieces).boxed().toList());
        boolean empty = Arrays.stream(pieces).allMatch(count -> count == 0);
        key.add(tree.kind());
        if (empty || patterns.size() >= MOST_PATTERNS || !known.add(key)) {
            return false;
        }
        patterns.add(tree);
        return true;
    }

    private int[] pieces(CutNode node) {
        int[] pieces = new int[counts.length];
        count(node, pieces);
        return pieces;
    }

    private static void count(CutNode node, int[] pieces) {
        if (node instanceof CutNode.Piece piece) {
            pieces[piece.type()]++;
        } else if (node instanceof CutNode.Split split) {
            split.nodes().forEach(inner -> count(inner, pieces));
        }
    }
}
