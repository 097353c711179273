package org.standwright.router.plan.places;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.search.Budget;
import org.standwright.sheet.search.Dice;

/**
 * Finds places for the pieces of a packing job anywhere on its boards, from a first answer on. Lanes search side by side,
 * each with its own seed, and tell each other the best after each round of steps, so that the answer does not depend on
 * the number of threads. When the boards cost as little as the bound, or the budget is spent, the lanes clear a rest as
 * large as they can.
 */
public final class PlaceSearch {
    /** Steps of one lane in one round, times pieces: a step of a larger job takes longer. */
    private static final int ROUND = 6_000;

    private static final int FEWEST_STEPS = 10;
    private static final int MOST_STEPS = 250;

    private final Terms terms;
    private final int steps;
    private final List<Lane> lanes;
    private final long goal;
    private Layout best;

    private PlaceSearch(PackingJob job, List<FilledBoard> first, long bound, Budget budget) {
        this.terms = new Terms(job);
        this.steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, ROUND / job.pieceCount()));
        this.goal = Math.multiplyExact(bound, Terms.DEAR);
        this.best = Layout.of(terms, first);
        new Recreation(terms, new Dice(budget.seed())).fill(best, Long.MAX_VALUE);
        this.lanes = IntStream.range(0, budget.lanes())
                .mapToObj(lane -> new Lane(terms, best, budget.seed() + lane, lane, budget.lanes()))
                .toList();
    }

    /**
     * Looks for boards of the least cost, then for the largest rest; the lanes run in the pool of the calling thread.
     *
     * @param first an answer, or a part of one
     * @param bound no answer costs less
     * @throws ScarceBoardsException when the boards do not suffice for all pieces
     */
    public static Filling run(PackingJob job, List<FilledBoard> first, long bound, Budget budget) {
        var search = new PlaceSearch(job, first, bound, budget);
        for (int round = 0; !budget.over().getAsBoolean() && round < budget.rounds() && !search.isDone(); round++) {
            search.round();
        }
        return search.found(budget.offcutRounds());
    }

    private boolean isDone() {
        return best.isComplete() && best.cost() <= goal;
    }

    private void round() {
        lanes.parallelStream().forEach(lane -> lane.run(steps, goal));
        for (var lane : lanes) {
            if (isBetter(lane.best(), best)) {
                best = lane.best();
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

    private Filling found(int rounds) {
        if (!best.isComplete()) {
            throw new ScarceBoardsException(best.missingArea());
        }
        return lanes.parallelStream().map(lane -> filling(lane.cleared(rounds * steps))).toList().stream()
                .reduce((a, b) -> b.cost() < a.cost() || b.cost() == a.cost() && b.rest() > a.rest() ? b : a)
                .orElseThrow();
    }

    private Filling filling(Layout layout) {
        var boards = layout.filled();
        return new Filling(
                boards,
                boards.stream()
                        .mapToLong(board -> terms.kind(board.kind()).cost())
                        .sum());
    }
}
