package org.standwright.sheet.search;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.standwright.sheet.job.PackingJob;
import org.standwright.sheet.lane.Budget;
import org.standwright.sheet.lane.Dice;
import org.standwright.sheet.lane.Lanes;
import org.standwright.sheet.lane.Layout;
import org.standwright.sheet.lane.ScarceStockException;
import org.standwright.sheet.lane.Tally;

/**
 * Finds cut trees for a packing job: a first answer at once, then better ones. Four lanes search side by side, each with
 * its own seed, and tell each other the best after each round of steps, so that the answer does not depend on the number
 * of threads; beside them a prover raises the bound. When the boards cost as little as the bound, or the budget is spent,
 * the lanes clear an offcut as large as they can.
 */
public final class Search {
    /** Steps of one lane in one round, times pieces: a step of a larger job takes longer. */
    private static final int ROUND = 30_000;

    private static final int FEWEST_STEPS = 20;
    private static final int MOST_STEPS = 500;
    /** Rounds from one choice among all boards met to the next. */
    private static final int CHOOSING = 40;

    /** Work of the prover in one round, for each lane. */
    private static final long PROVING = 400_000;

    private final Terms terms;
    private final int steps;
    private final Lanes<Board> lanes;
    private final List<Patterns> patterns;
    private final Prover prover;
    private final Dice dice;
    private int round;

    private Search(PackingJob job, long bound, Budget budget, Consumer<Packing> improved) {
        this.terms = new Terms(job);
        this.prover = new Prover(job, bound);
        this.dice = new Dice(budget.seed());
        this.steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, ROUND / job.pieceCount()));
        this.patterns =
                Stream.generate(() -> new Patterns(terms)).limit(budget.lanes()).toList();
        var first = FirstLayout.of(terms);
        this.lanes = new Lanes<>(
                terms.tally,
                first,
                budget,
                (lane, own) -> new RuinAndRecreate(terms, own, patterns.get(lane)),
                better -> improved.accept(packing(better)));
        if (first.isComplete()) {
            improved.accept(packing(first));
        }
    }

    /**
     * Looks for boards of the least cost, then for the largest offcut; the lanes run in the pool of the calling thread.
     *
     * @param bound no plan costs less
     * @param improved is told each better answer as it is found
     * @throws ScarceStockException when the boards do not suffice for all pieces
     */
    public static Found run(PackingJob job, long bound, Budget budget, Consumer<Packing> improved) {
        var whole = WholeBoards.of(job, bound, budget.seed());
        if (whole.isPresent()) {
            var answer = Packing.of(job, whole.get());
            improved.accept(answer);
            return new Found(List.of(answer), bound);
        }
        var search = new Search(job, bound, budget, improved);
        while (search.round < budget.rounds()
                && !search.isDone()
                && !budget.over().getAsBoolean()) {
            search.round();
        }
        return search.found(budget.offcutRounds());
    }

    private boolean isDone() {
        return lanes.best().isFor(goal());
    }

    private long goal() {
        return Tally.count(prover.bound());
    }

    private void round() {
        var best = lanes.best();
        long cost = best.isComplete() ? best.cost() / Tally.DEAR : Long.MAX_VALUE;
        lanes.run(steps, goal(), () -> prover.run(cost, lanes.count() * PROVING));
        if (++round % CHOOSING == 0 && lanes.best().isComplete() && !isDone()) {
            choose();
        }
        lanes.share();
    }

    private void choose() {
        var choice = new Choice(terms, lanes.best(), patterns, prover.boards());
        var cheaper = choice.cheaper(-2L * round);
        if (cheaper.isPresent()) {
            lanes.offer(cheaper.get());
            return;
        }
        var lane = lanes.lane(round / CHOOSING % lanes.count());
        if (lane.isIdle()) {
            lane.restart(choice.start(lanes.best().cost() - 1, dice, -2L * round - 1));
        }
    }

    private Found found(int offcutRounds) {
        var answers = lanes.finish(
                (best, search) -> packing(new OffcutSearch(terms, best, search).run(offcutRounds * steps)));
        return new Found(answers, prover.bound());
    }

    private Packing packing(Layout<Board> layout) {
        return Packing.of(terms.job, layout);
    }
}
