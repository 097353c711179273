package org.standwright.solid.mesh.face;

import java.util.Arrays;

/** Sorts longs by their upper halves; those that are equal there stay in order. Twice as fast as by comparing when there are many. */
final class RadixSort {
    private static final int BITS = 11;
    private static final int DIGITS = 3;
    private static final int FEW = 500;

    private RadixSort() {}

    /** Sorts {@code keys}, whose lower halves rise when they come; returns them or another array of them. */
    static long[] byUpperHalf(long[] keys) {
        if (keys.length < FEW) {
            Arrays.sort(keys);
            return keys;
        }
        var from = keys;
        var to = new long[keys.length];
        for (int digit = 0; digit < DIGITS; digit++) {
            deal(from, to, Integer.SIZE + BITS * digit, digit == DIGITS - 1);
            var spare = from;
            from = to;
            to = spare;
        }
        return from;
    }

    /** The topmost digit has the sign: less than 0 comes first. */
    private static void deal(long[] from, long[] to, int shift, boolean signed) {
        int flip = signed ? 1 << Long.SIZE - shift - 1 : 0;
        var next = new int[(1 << BITS) + 1];
        for (long key : from) {
            next[1 + digit(key, shift, flip)]++;
        }
        for (int i = 1; i < next.length; i++) {
            next[i] += next[i - 1];
        }
        for (long key : from) {
            to[next[digit(key, shift, flip)]++] = key;
        }
    }

    private static int digit(long key, int shift, int flip) {
        return (int) (key >>> shift) & (1 << BITS) - 1 ^ flip;
    }
}
