package org.standwright.sheet.bound;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.cover.Column;
import org.standwright.sheet.cover.CoveringProgram;
import org.standwright.sheet.job.BoardKind;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.job.PieceType;

/**
 * A job's patterns at one fineness: the best pattern of each kind of board for given prices of the pieces, and the
 * linear program over the patterns met so far, whose rows are the types and then the kinds that run out.
 */
final class Level {
    private static final int MOST_PIVOTS = 20_000;

    private final PackingJob job;
    private final List<GuillotineKnapsack> knapsacks;
    private final int[] limitRows;
    private final CoveringProgram program;

    Level(PackingJob job, int steps) {
        this.job = job;
        knapsacks = job.kinds().stream()
                .map(kind -> GuillotineKnapsack.exact(job.types(), kind, steps + 1)
                        .orElseGet(() -> GuillotineKnapsack.coarse(job.types(), kind, steps)))
                .toList();
        limitRows = limitRows(job);
        program = new CoveringProgram(needed(job), 1 + 10.0 * dearest(job));
        for (int kind = 0; kind < job.kinds().size(); kind++) {
            for (int type = 0; type < job.types().size(); type++) {
                addAlone(type, kind);
            }
        }
    }

    private static double dearest(PackingJob job) {
        return job.kinds().stream().mapToDouble(BoardKind::cost).max().orElseThrow();
    }

    /** By kind, its row in the program; -1 for what does not run out. */
    private static int[] limitRows(PackingJob job) {
        int pieces = job.pieceCount();
        int next = job.types().size();
        int[] rows = new int[job.kinds().size()];
        for (int kind = 0; kind < rows.length; kind++) {
            rows[kind] = job.kinds().get(kind).count() < pieces ? next++ : -1;
        }
        return rows;
    }

    private static double[] needed(PackingJob job) {
        int pieces = job.pieceCount();
        return IntStream.concat(
                        job.types().stream().mapToInt(PieceType::count),
                        job.kinds().stream()
                                .filter(kind -> kind.count() < pieces)
                                .mapToInt(kind -> -kind.count()))
                .asDoubleStream()
                .toArray();
    }

    /** A board full of one type. */
    private void addAlone(int type, int kind) {
        var piece = job.types().get(type);
        var board = job.kinds().get(kind);
        int most = 0;
        for (boolean turned : new boolean[] {false, true}) {
            if (piece.fits(board, turned)) {
                most = Math.max(most, board.length() / piece.along(turned) * (board.width() / piece.across(turned)));
            }
        }
        if (most > 0) {
            int[] counts = new int[job.types().size()];
            counts[type] = most;
            add(kind, counts);
        }
    }

    Column column(int kind, int[] counts) {
        var column = Column.of(job.kinds().get(kind).cost(), counts);
        return limitRows[kind] < 0 ? column : column.and(limitRows[kind], -1);
    }

    void add(int kind, int[] counts) {
        program.add(column(kind, counts));
    }

    void solve() {
        program.solve(MOST_PIVOTS);
    }

    /** Of the types, then of the kinds that run out. */
    double[] prices() {
        return program.prices();
    }

    /** Least cost with the patterns met so far, boards in parts. */
    double cost() {
        return program.cost();
    }

    boolean isCovered() {
        return program.isCovered();
    }

    boolean isExact() {
        return knapsacks.stream().allMatch(GuillotineKnapsack::isExact);
    }

    GuillotineKnapsack knapsack(int kind) {
        return knapsacks.get(kind);
    }

    /** What finding the best patterns takes. */
    long work() {
        int rows = job.types().size() + 1;
        return knapsacks.stream().mapToLong(GuillotineKnapsack::work).sum() + 8L * rows * rows;
    }
}
