package org.standwright.sheet.cover;

import java.util.Arrays;

/**
 * What one board or bar can be cut into.
 *
 * @param counts pieces by type; not changed by whoever holds it
 * @param kind of board or bar, by index
 */
public record Pattern(int[] counts, long cost, int kind) {
    public Pattern {
        counts = counts.clone();
    }

    boolean isEmpty() {
        return Arrays.stream(counts).allMatch(count -> count == 0);
    }

    /** The same board with nothing cut from it: never chosen. */
    public Pattern without() {
        return new Pattern(new int[counts.length], cost, kind);
    }
}
