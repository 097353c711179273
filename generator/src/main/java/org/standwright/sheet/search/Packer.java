package org.standwright.sheet.search;

import java.util.List;
import org.standwright.sheet.job.CutTree;
import org.standwright.sheet.job.PackingJob;

/** The search's one door: a job in, a cut tree for each board out. */
public final class Packer {
    private static final long SEED = 42;
    private static final int MOST_STEPS = 4000;
    /** Steps times pieces: a step of a larger job takes longer. */
    private static final int EFFORT = 180_000;

    private Packer() {}

    /** @param bound no plan has fewer boards: the search stops trying there */
    public static List<CutTree> pack(PackingJob job, int bound) {
        int steps = Math.min(MOST_STEPS, EFFORT / job.pieceCount());
        var search = new RuinAndRecreate(job, new Dice(SEED));
        var fewest = search.fewer(GreedyPacker.pack(job), bound, steps);
        var best = search.tidier(fewest, steps / 20);
        return best.boards().stream().map(board -> new CutTree(0, board.tree())).toList();
    }
}
