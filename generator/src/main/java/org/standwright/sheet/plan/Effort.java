package org.standwright.sheet.plan;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.standwright.sheet.lane.Budget;

/**
 * How much is spent on a plan.
 *
 * @param rounds of the search for sheets at most, for each material
 * @param offcutRounds of the search for the largest offcut, after it
 * @param seconds for the sheets of each material; 0 where only rounds count
 * @param isRepeatable whether the same job gives the same plan on every machine
 */
public record Effort(int rounds, int offcutRounds, double seconds, boolean isRepeatable) {
    /** A first plan in milliseconds, to compare designs. */
    public static final Effort QUICK = new Effort(2, 0, 0, true);
    /** About half a second's worth for an ordinary stand. */
    public static final Effort USUAL = new Effort(24, 6, 0, true);

    /**
     * As good as it gets in so much time for each material; not repeatable.
     *
     * @throws IllegalArgumentException outside 0.1 to 3600 s
     */
    public static Effort seconds(double seconds) {
        if (!(seconds >= 0.1 && seconds <= 3600)) {
            throw new IllegalArgumentException("planning for " + seconds + " s is outside 0.1 to 3600 s.");
        }
        return new Effort(Integer.MAX_VALUE, 12, seconds, false);
    }

    /** @param givenUp asked after each round; the search then ends with a {@link CancellationException} */
    public Budget budget(BooleanSupplier givenUp) {
        if (isRepeatable) {
            return Budget.rounds(rounds, offcutRounds, () -> isOver(givenUp));
        }
        long end = System.nanoTime() + (long) (seconds * 1e9);
        return Budget.until(() -> isOver(givenUp) || System.nanoTime() - end > 0, offcutRounds, Budget.SEED);
    }

    private static boolean isOver(BooleanSupplier givenUp) {
        if (givenUp.getAsBoolean()) {
            throw new CancellationException("The plan was given up.");
        }
        return false;
    }
}
