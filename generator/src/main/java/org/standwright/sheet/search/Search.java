package org.standwright.sheet.search;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PackingJob;

/**
 * Finds cut trees for a packing job: a first answer at once, then better ones. Four lanes search side by side, each with
 * its own seed, and tell each other the best after each round of steps, so that the answer does not depend on the number
 * of threads. When the boards cost as little as the bound, or the budget is spent, the lanes clear an offcut as large
 * as they can.
 */
public final class Search {
    private static final int LANES = 4;
    /** Steps of one lane in one round, times pieces: a step of a larger job takes longer. */
    private static final int ROUND = 30_000;

    private static final int FEWEST_STEPS = 20;
    private static final int MOST_STEPS = 500;
    private final Terms terms;
    private final long goal;
    private final int steps;
    private final Consumer<Packing> improved;
    private final List<Lane> lanes;
    private Layout best;

    private Search(PackingJob job, long bound, long seed, Consumer<Packing> improved) {
        this.terms = new Terms(job);
        this.goal = Math.multiplyExact(bound, Terms.DEAR);
        this.steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, ROUND / job.pieceCount()));
        this.improved = improved;
        this.best = FirstLayout.of(terms);
        this.lanes = IntStream.range(0, LANES)
                .mapToObj(lane -> new Lane(terms, best, seed + lane, lane, LANES))
                .toList();
        tell();
    }

    /**
     * Answers, one from each lane; the lanes run in the pool of the calling thread.
     *
     * @param bound no plan costs less: the search stops there
     * @param improved is told each better answer as it is found
     * @throws ScarceStockException when the boards do not suffice for all pieces
     */
    public static List<Packing> run(PackingJob job, long bound, Budget budget, Consumer<Packing> improved) {
        var search = new Search(job, bound, budget.seed(), improved);
        for (int round = 0; round < budget.rounds() && !search.isDone() && !budget.over().getAsBoolean(); round++) {
            search.round();
        }
        return search.answers(budget.offcutRounds());
    }

    private boolean isDone() {
        return best.isComplete() && best.cost() <= goal;
    }

    private void round() {
        lanes.parallelStream().forEach(lane -> lane.run(steps, goal));
        for (var lane : lanes) {
            if (isBetter(lane.best(), best)) {
                best = lane.best();
                tell();
            }
        }
        for (var lane : lanes) {
            if (isBetter(best, lane.best())) {
                lane.adopt(best);
            }
        }
    }

    private static boolean isBetter(Layout layout, Layout than) {
        return layout.isComplete() && (!than.isComplete() || layout.cost() < than.cost());
    }

    private void tell() {
        if (best.isComplete()) {
            improved.accept(packing(best));
        }
    }

    private List<Packing> answers(int offcutRounds) {
        if (!best.isComplete()) {
            throw new ScarceStockException(best.missingArea());
        }
        var layouts = lanes.parallelStream()
                .map(lane -> lane.cleared(offcutRounds * steps))
                .toList();
        return layouts.stream()
                .map(this::packing)
                .toList();
    }

    private Packing packing(Layout layout) {
        var boards = layout.trees();
        long cost = boards.stream().mapToLong(board -> terms.kind(board.kind()).cost()).sum();
        return new Packing(boards, cost, layout.largestOffcut());
    }
}
