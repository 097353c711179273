package org.standwright.sheet.lane;

/** Seeded chance that falls the same on every machine: the generator known as SplitMix64. */
public final class Dice {
    private static final long STEP = 0x9E3779B97F4A7C15L;
    /** Draws until a candidate is overlooked, for one in twenty. */
    private static final int OVERLOOKED_ONE_IN = 20;

    private long state;
    private int untilOverlooked;

    public Dice(long seed) {
        this.state = seed * STEP;
        this.untilOverlooked = gap();
    }

    private long next() {
        state += STEP;
        long z = (state ^ (state >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** 0 to bound - 1. */
    public int below(int bound) {
        return (int) ((next() >>> 32) * bound >>> 32);
    }

    public boolean oneIn(int bound) {
        return below(bound) == 0;
    }

    /** True for one candidate in twenty: small chances are drawn once for many candidates. */
    public boolean overlooks() {
        if (--untilOverlooked > 0) {
            return false;
        }
        untilOverlooked = gap();
        return true;
    }

    /** Draws up to and with the next overlooked one, as if each had been drawn by itself. */
    private int gap() {
        double share = ((next() >>> 11) + 1) * 0x1.0p-53;
        return 1 + (int) (StrictMath.log(share) / StrictMath.log(1 - 1.0 / OVERLOOKED_ONE_IN));
    }
}
