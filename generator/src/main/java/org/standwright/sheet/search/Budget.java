package org.standwright.sheet.search;

import java.util.function.BooleanSupplier;

/**
 * How long a search goes on.
 *
 * @param rounds at most; lanes tell each other their best after each
 * @param offcutRounds that each lane spends on its largest offcut in the end
 * @param seed of the first lane
 * @param over asked after each round; a clock behind it makes the result depend on the machine
 */
public record Budget(int rounds, int offcutRounds, long seed, BooleanSupplier over) {
    private static final long SEED = 42;

    /** So many rounds, with the same result everywhere. */
    public static Budget rounds(int rounds, int offcutRounds) {
        return new Budget(rounds, offcutRounds, SEED, () -> false);
    }

    /** Until it is told to stop. */
    public static Budget until(BooleanSupplier over, int offcutRounds) {
        return new Budget(Integer.MAX_VALUE, offcutRounds, SEED, over);
    }
}
