package org.standwright.sheet.lane;

import java.util.Arrays;

/**
 * What a search came by in its last steps: what it finds may be worse than what it goes on from, if it is not worse than
 * what stood some steps ago.
 */
final class Memory {
    /** How many steps back a layout is compared to, at first. */
    private static final int SHORT = 50;
    /** Steps without progress, in memories, after which the memory grows. */
    private static final int PATIENCE = 400;

    private static final int LONG = 2000;

    private long[] missing = new long[SHORT];
    private double[] values = new double[SHORT];
    private int slot;
    private long currentMissing;
    private double currentValue;
    private long leastMissing;
    private int idle;

    /**
     * Forgets all but this.
     *
     * @param missingArea of the pieces without a place: the less the better
     * @param value of what is free: of equals, the more the better
     */
    void begin(long missingArea, double value) {
        currentMissing = missingArea;
        currentValue = value;
        fill(SHORT);
    }

    private void fill(int steps) {
        if (steps != missing.length) {
            missing = new long[steps];
            values = new double[steps];
        }
        Arrays.fill(missing, currentMissing);
        Arrays.fill(values, currentValue);
        leastMissing = currentMissing;
        slot = 0;
        idle = 0;
    }

    /** Whether the search goes on from what it came by in this step. */
    boolean accepts(long missingArea, double value) {
        boolean accepted = !better(missing[slot], values[slot], missingArea, value)
                || !better(currentMissing, currentValue, missingArea, value);
        if (accepted) {
            accept(missingArea, value);
        }
        missing[slot] = currentMissing;
        values[slot] = currentValue;
        slot = slot + 1 == missing.length ? 0 : slot + 1;
        if (++idle > PATIENCE * missing.length && missing.length < LONG) {
            fill(2 * missing.length);
        }
        return accepted;
    }

    private void accept(long missingArea, double value) {
        currentMissing = missingArea;
        currentValue = value;
        if (currentMissing < leastMissing) {
            leastMissing = currentMissing;
            idle = 0;
        }
    }

    private static boolean better(long missingA, double valueA, long missingB, double valueB) {
        return missingA != missingB ? missingA < missingB : valueA > valueB;
    }

    /** Whether it has come no nearer for long. */
    boolean isIdle() {
        return idle > PATIENCE * missing.length / 2;
    }
}
