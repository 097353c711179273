package org.standwright.sheet;

import java.util.List;

/** The search's one door: a job in, a cut tree for each board out. */
final class Packer {
    private static final long SEED = 42;
    /** Steps times pieces: what a job of 60 pieces may take is a fraction of a second. */
    private static final int EFFORT = 180_000;

    private static final int MOST_STEPS = 4000;

    private Packer() {}

    /** @param bound no plan has fewer boards: the search stops trying there */
    static List<CutNode> pack(PackingJob job, int bound) {
        int steps = Math.min(MOST_STEPS, EFFORT / job.pieceCount());
        var search = new RuinAndRecreate(job, new Dice(SEED));
        var fewest = search.improve(GreedyPacker.pack(job), bound, steps);
        var best = search.improve(fewest, fewest.boards().size(), steps / 2);
        return best.boards().stream().map(Board::tree).toList();
    }
}
