package org.standwright.router.plan.places;

import java.util.List;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Lanes;
import org.standwright.sheet.lane.Layout;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.lane.Tally;

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
    private final Lanes<Board> lanes;
    private final long goal;

    private PlaceSearch(PackingJob job, List<FilledBoard> first, long bound, Budget budget) {
        this.terms = new Terms(job);
        this.steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, ROUND / job.pieceCount()));
        this.goal = Tally.count(bound);
        var layout = layout(first);
        new Recreation(terms, new Dice(budget.seed())).fill(layout, Long.MAX_VALUE);
        this.lanes = new Lanes<>(
                terms.tally, layout, budget, (lane, dice) -> new RuinAndRecreate(terms, dice), better -> {});
    }

    /** Boards filled like these. */
    private Layout<Board> layout(List<FilledBoard> filled) {
        var layout = Layout.<Board>empty(terms.tally);
        filled.forEach(board -> layout.lay(Board.of(terms, board, layout.owner())));
        return layout;
    }

    /**
     * Looks for boards of the least cost, then for the largest rest; the lanes run in the pool of the calling thread.
     *
     * @param first an answer, or a part of one
     * @param bound no answer costs less
     * @throws ScarceStockException when the boards do not suffice for all pieces
     */
    public static Filling run(PackingJob job, List<FilledBoard> first, long bound, Budget budget) {
        var search = new PlaceSearch(job, first, bound, budget);
        for (int round = 0; !budget.over().getAsBoolean() && round < budget.rounds() && !search.isDone(); round++) {
            search.lanes.run(search.steps, search.goal, () -> {});
            search.lanes.share();
        }
        return search.found(budget.offcutRounds());
    }

    private boolean isDone() {
        return lanes.best().isFor(goal);
    }

    private Filling found(int rounds) {
        return lanes.finish((best, search) -> filling(new Clearing(terms, best, search).run(rounds * steps))).stream()
                .reduce((a, b) -> b.cost() < a.cost() || b.cost() == a.cost() && b.rest() > a.rest() ? b : a)
                .orElseThrow();
    }

    private Filling filling(Layout<Board> layout) {
        var boards = layout.boards().stream().map(Board::filled).toList();
        return new Filling(
                boards,
                boards.stream()
                        .mapToLong(board -> terms.kind(board.kind()).cost())
                        .sum());
    }
}
