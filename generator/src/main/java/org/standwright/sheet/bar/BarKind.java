package org.standwright.sheet.bar;

/**
 * Bars of one length.
 *
 * @param length that can be used, units
 * @param count how many there are, {@link #UNLIMITED} for as many as it takes
 * @param cost of one, in any unit; 0 for what is at hand
 */
public record BarKind(int length, int count, long cost) {
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public BarKind {
        if (length <= 0 || count <= 0 || cost < 0) {
            throw new IllegalArgumentException("a bar has a length of " + length + " units, a count of " + count
                    + " and a cost of " + cost + "; the first two must be more than 0, the last 0 or more.");
        }
    }

    /** As many bars as it takes, each as good as another. */
    public static BarKind endless(int length) {
        return new BarKind(length, UNLIMITED, 1);
    }
}
