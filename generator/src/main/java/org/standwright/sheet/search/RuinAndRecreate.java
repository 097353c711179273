package org.standwright.sheet.search;

import java.util.Arrays;
import org.standwright.sheet.job.PackingJob;

/**
 * Improves a layout: take some pieces off, lay them again where few places remain for them, keep the result if it is
 * not worse than what stood some steps ago. After T. Gardeyn, T. Wauters, A goal-driven ruin and recreate heuristic for
 * the 2D variable-sized bin packing problem with guillotine constraints, EJOR 2021.
 */
final class RuinAndRecreate {
    private static final int MEAN_REMOVALS = 4;
    private static final int OVERLOOKED_ONE_IN = 20;
    private static final int MEMORY = 20;

    private final PackingJob job;
    private final Dice dice;
    private final InsertionSearch insertions;
    private final Score[] memory = new Score[MEMORY];

    RuinAndRecreate(PackingJob job, Dice dice) {
        this.job = job;
        this.dice = dice;
        this.insertions = new InsertionSearch(job, () -> dice.oneIn(OVERLOOKED_ONE_IN));
    }

    /** The layout with the fewest boards found in so many steps, at worst {@code start}; stops at the bound. */
    Layout fewer(Layout start, int bound, int steps) {
        var best = start;
        var current = withoutEmptiest(best);
        for (int step = 0; step < steps && best.boards().size() > bound; step++) {
            var trial = next(current, best.boards().size() - 1);
            if (trial.complete()) {
                best = trial;
                current = withoutEmptiest(best);
            } else if (accepts(trial, current, step)) {
                current = trial;
            }
        }
        return best;
    }

    /** The same pieces on as many boards, with the larger offcuts found in so many steps. */
    Layout tidier(Layout start, int steps) {
        var best = start;
        var current = start;
        Arrays.fill(memory, Score.of(start));
        for (int step = 0; step < steps; step++) {
            var trial = next(current, start.boards().size());
            if (trial.complete() && trial.betterThan(best)) {
                best = trial;
            }
            if (accepts(trial, current, step)) {
                current = trial;
            }
        }
        return best;
    }

    private Layout withoutEmptiest(Layout layout) {
        var fewer = layout.copy();
        fewer.dropEmptiest();
        Arrays.fill(memory, Score.of(fewer));
        return fewer;
    }

    private Layout next(Layout current, int limit) {
        var trial = current.copy();
        ruin(trial);
        recreate(trial, limit);
        return trial;
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
        layout.returnWholeBoards();
    }

    /** Index of the missing type with the fewest insertions, any of them at a tie, -1 if none waits. */
    private int scarcest(Layout layout, boolean[] waiting) {
        int scarcest = -1;
        int fewest = Integer.MAX_VALUE;
        int ties = 0;
        for (int type = 0; type < waiting.length; type++) {
            if (waiting[type] && layout.missing(type) > 0) {
                int count = insertions.count(layout, type, fewest);
                ties = count < fewest ? 1 : ties + (count == fewest ? 1 : 0);
                if (count < fewest || count == fewest && dice.oneIn(ties)) {
                    fewest = count;
                    scarcest = type;
                }
            }
        }
        return scarcest;
    }

    private boolean accepts(Layout trial, Layout current, int step) {
        int slot = step % MEMORY;
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
