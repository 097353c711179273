package org.standwright.sheet.lane;

import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.function.BooleanSupplier;

/**
 * How long a search goes on.
 *
 * @param lanes searches side by side
 * @param rounds at most; lanes tell each other their best after each
 * @param offcutRounds that each lane spends on its largest offcut in the end
 * @param seed of the first lane
 * @param over asked after each round; a clock behind it makes the result depend on the machine
 */
public record Budget(int lanes, int rounds, int offcutRounds, long seed, BooleanSupplier over) {
    public static final long SEED = 42;

    private static final int LANES = 4;

    /** So many rounds, with the same result everywhere. */
    public static Budget rounds(int rounds, int offcutRounds) {
        return rounds(rounds, offcutRounds, () -> false);
    }

    /** So many rounds, unless it is over before. */
    public static Budget rounds(int rounds, int offcutRounds, BooleanSupplier over) {
        return new Budget(LANES, rounds, offcutRounds, SEED, over);
    }

    /** Until it is told to stop, with a lane for each thread of the calling pool, though not more than there are. */
    public static Budget until(BooleanSupplier over, int offcutRounds, long seed) {
        int threads = ForkJoinTask.inForkJoinPool()
                ? ForkJoinTask.getPool().getParallelism()
                : ForkJoinPool.getCommonPoolParallelism() + 1;
        return new Budget(Math.min(LANES, threads), Integer.MAX_VALUE, offcutRounds, seed, over);
    }
}
