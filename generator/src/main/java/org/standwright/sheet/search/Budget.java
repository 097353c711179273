package org.standwright.sheet.search;

import java.util.function.BooleanSupplier;

/**
 * How long a search goes on.
 *
 * @param rounds at most; lanes tell each other their best after each
 * @param over asked after each round; a clock behind it makes the result depend on the machine
 */
public record Budget(int rounds, BooleanSupplier over) {
    /** So many rounds, with the same result everywhere. */
    public static Budget rounds(int rounds) {
        return new Budget(rounds, () -> false);
    }
}
