package org.standwright.sheet;

import java.util.Arrays;

/**
 * Improves a layout: take some pieces off, lay them again where few places remain for them, keep the result if it is
 * not worse than what stood some steps ago. Works towards one board fewer than the best complete layout until the bound
 * is reached, then towards larger offcuts. After T. Gardeyn, T. Wauters, A goal-driven ruin and recreate heuristic for
 * the 2D variable-sized bin packing problem with guillotine constraints, EJOR 2021.
 */
final class RuinAndRecreate {
    private static final int MEAN_REMOVALS = 4;
    private static final int OVERLOOKED_ONE_IN = 20;
    private static final int MEMORY = 50;

    private final PackingJob job;
    private final Dice dice;
    private final InsertionSearch insertions;
    private final Score[] memory = new Score[MEMORY];

    RuinAndRecreate(PackingJob job, Dice dice) {
        this.job = job;
        this.dice = dice;
        this.insertions = new InsertionSearch(job, () -> dice.oneIn(OVERLOOKED_ONE_IN));
    }

    /** The best complete layout found in so many steps, at worst {@code start} itself. */
    Layout improve(Layout start, int bound, int steps) {
        var best = start;
        var current = goal(best, bound);
        for (int step = 0; step < steps; step++) {
            int limit = Math.max(bound, best.boards().size() - 1);
            var trial = current.copy();
            ruin(trial);
            recreate(trial, limit);
            if (trial.complete() && trial.betterThan(best)) {
                boolean fewer = trial.boards().size() < best.boards().size();
                best = trial;
                current = fewer ? goal(best, bound) : trial;
            } else if (accepts(trial, current, step % MEMORY)) {
                current = trial;
            }
        }
        return best;
    }

    /** Where to go on from a new best: with a board too many, without its emptiest. */
    private Layout goal(Layout best, int bound) {
        var next = best.copy();
        if (next.boards().size() > bound) {
            next.dropEmptiest();
        }
        Arrays.fill(memory, Score.of(next));
        return next;
    }

    private void ruin(Layout layout) {
        int removals = 1 + dice.below(2 * MEAN_REMOVALS - 1);
        for (int i = 0; i < removals && !layout.boards().isEmpty(); i++) {
            int board = dice.below(layout.boards().size());
            var nodes = layout.boards().get(board).nodes();
            layout.remove(board, nodes.get(dice.below(nodes.size())));
        }
    }

    /** The piece with the fewest places goes first; one without a place begins a board, or stays missing. */
    private void recreate(Layout layout, int limit) {
        var waiting = new boolean[job.types().size()];
        Arrays.fill(waiting, true);
        for (int type = scarcest(layout, waiting); type >= 0; type = scarcest(layout, waiting)) {
            var insertion = insertions.cheapest(layout, type);
            if (insertion.isPresent()) {
                layout.insert(insertion.get());
            } else if (layout.boards().size() < limit) {
                layout.begin(Board.whole(job));
            } else {
                waiting[type] = false;
            }
        }
    }

    /** Index of the missing type with the fewest insertions, -1 if none waits. */
    private int scarcest(Layout layout, boolean[] waiting) {
        int scarcest = -1;
        int fewest = Integer.MAX_VALUE;
        for (int type = 0; type < waiting.length; type++) {
            if (waiting[type] && layout.missing(type) > 0) {
                int count = insertions.count(layout, type, fewest);
                if (count < fewest) {
                    fewest = count;
                    scarcest = type;
                }
            }
        }
        return scarcest;
    }

    private boolean accepts(Layout trial, Layout current, int slot) {
        var score = Score.of(trial);
        boolean accepted = !memory[slot].better(score) || !Score.of(current).better(score);
        memory[slot] = accepted ? score : Score.of(current);
        return accepted;
    }

    /** Less missing is better, then more value in the rests. */
    private record Score(long missingArea, double restValue) {
        static Score of(Layout layout) {
            return new Score(layout.missingArea(), layout.restValue());
        }

        boolean better(Score other) {
            return missingArea != other.missingArea ? missingArea < other.missingArea : restValue > other.restValue;
        }
    }
}
