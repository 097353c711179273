package org.standwright.sheet.search;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.standwright.sheet.job.PackingJob;

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
    private final Consumer<Packing> improved;
    private final List<Lane> lanes;
    private final Prover prover;
    private final Dice dice;
    private Layout best;
    private int round;

    private Search(PackingJob job, long bound, Budget budget, Consumer<Packing> improved) {
        this.terms = new Terms(job);
        this.prover = new Prover(job, bound);
        this.dice = new Dice(budget.seed());
        this.steps = Math.max(FEWEST_STEPS, Math.min(MOST_STEPS, ROUND / job.pieceCount()));
        this.improved = improved;
        this.best = FirstLayout.of(terms);
        this.lanes = IntStream.range(0, budget.lanes())
                .mapToObj(lane -> new Lane(terms, best, budget.seed() + lane, lane, budget.lanes()))
                .toList();
        tell();
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
        return best.isComplete() && best.cost() <= goal();
    }

    private long goal() {
        return Math.multiplyExact(prover.bound(), Terms.DEAR);
    }

    private void round() {
        long goal = goal();
        long cost = best.isComplete() ? best.cost() / Terms.DEAR : Long.MAX_VALUE;
        var work = new ArrayList<Runnable>();
        lanes.forEach(lane -> work.add(() -> lane.run(steps, goal)));
        work.add(() -> prover.run(cost, lanes.size() * PROVING));
        work.parallelStream().forEach(Runnable::run);
        for (var lane : lanes) {
            if (isBetter(lane.best(), best)) {
                best = lane.best();
                tell();
            }
        }
        if (++round % CHOOSING == 0 && best.isComplete() && !isDone()) {
            choose();
        }
        for (var lane : lanes) {
            if (isBetter(best, lane.best())) {
                lane.adopt(best);
            }
        }
    }

    private void choose() {
        var patterns = lanes.stream().map(Lane::patterns).toList();
        var choice = new Choice(terms, best, patterns, prover.boards());
        var cheaper = choice.cheaper(-2L * round);
        if (cheaper.isPresent()) {
            best = cheaper.get();
            tell();
            return;
        }
        var lane = lanes.get(round / CHOOSING % lanes.size());
        if (lane.isIdle()) {
            lane.restart(choice.start(best.cost() - 1, dice, -2L * round - 1));
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

    private Found found(int offcutRounds) {
        if (!best.isComplete()) {
            throw new ScarceStockException(best.missingArea());
        }
        var answers = lanes.parallelStream()
                .map(lane -> packing(lane.cleared(offcutRounds * steps)))
                .toList();
        return new Found(answers, prover.bound());
    }

    private Packing packing(Layout layout) {
        return Packing.of(terms.job, layout.trees());
    }
}
