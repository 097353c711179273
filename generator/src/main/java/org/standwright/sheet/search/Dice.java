package org.standwright.sheet.search;

import java.util.SplittableRandom;

/** Seeded chance that falls the same on every machine: bounds are applied here, not by the library. */
final class Dice {
    private final SplittableRandom random;

    Dice(long seed) {
        this.random = new SplittableRandom(seed);
    }

    /** 0 to bound - 1. */
    int below(int bound) {
        return (int) ((random.nextLong() >>> 32) * bound >>> 32);
    }

    boolean oneIn(int bound) {
        return below(bound) == 0;
    }
}
