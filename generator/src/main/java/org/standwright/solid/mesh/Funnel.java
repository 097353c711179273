package org.standwright.solid.mesh;

import java.util.Arrays;

/**
 * The part of a face between two edges that the sweep has reached but not yet cut into triangles: bounded on the left
 * by a chain of corners from the lower edge up to the upper one that bulges to the right.
 */
final class Funnel {
    private final Sweep sweep;
    /** The edges below and above, as the corner that each starts at. */
    private final int lower;

    private final int upper;
    /** Corners from the lower edge to the upper one. */
    private final int[] chain;

    Funnel(Sweep sweep, int lower, int upper, int... chain) {
        this.sweep = sweep;
        this.lower = lower;
        this.upper = upper;
        this.chain = chain;
    }

    int lower() {
        return lower;
    }

    int upper() {
        return upper;
    }

    /** The lower edge has ended in corner {@code v}, where {@code edge} goes on. */
    Funnel onBelow(int v, int edge) {
        return new Funnel(sweep, edge, upper, joinBelow(v, chain));
    }

    /** The upper edge has ended in corner {@code v}, where {@code edge} goes on. */
    Funnel onAbove(int v, int edge) {
        return new Funnel(sweep, lower, edge, joinAbove(v, chain));
    }

    /** The part below a corner {@code v} inside, from which {@code edge} runs on to the right. */
    Funnel below(int v, int edge) {
        return new Funnel(sweep, lower, edge, joinAbove(v, Arrays.copyOf(chain, rightmost() + 1)));
    }

    /** The part above a corner {@code v} inside, from which {@code edge} runs on to the right. */
    Funnel above(int v, int edge) {
        return new Funnel(sweep, edge, upper, joinBelow(v, Arrays.copyOfRange(chain, rightmost(), chain.length)));
    }

    /** This one and the one above it after the edges between them have ended in corner {@code v}. */
    Funnel mergedAt(int v, Funnel above) {
        var low = joinAbove(v, chain);
        var high = joinBelow(v, above.chain);
        var both = Arrays.copyOf(low, low.length + high.length - 1);
        System.arraycopy(high, 1, both, low.length, high.length - 1);
        return new Funnel(sweep, lower, above.upper, both);
    }

    /** Both edges have ended in corner {@code v}. Triangles of no area may come of this. */
    void close(int v) {
        for (int i = 0; i + 1 < chain.length; i++) {
            sweep.emit(chain[i], v, chain[i + 1]);
        }
    }

    private int[] joinBelow(int v, int[] from) {
        int i = 0;
        while (i + 1 < from.length && sweep.turn(from[i], v, from[i + 1]) > 0) {
            sweep.emit(from[i], v, from[i + 1]);
            i++;
        }
        var joined = new int[from.length - i + 1];
        joined[0] = v;
        System.arraycopy(from, i, joined, 1, from.length - i);
        return joined;
    }

    private int[] joinAbove(int v, int[] from) {
        int i = from.length - 1;
        while (i > 0 && sweep.turn(from[i - 1], v, from[i]) > 0) {
            sweep.emit(from[i - 1], v, from[i]);
            i--;
        }
        var joined = Arrays.copyOf(from, i + 2);
        joined[i + 1] = v;
        return joined;
    }

    private int rightmost() {
        int best = 0;
        for (int i = 1; i < chain.length; i++) {
            if (sweep.compare(chain[i], chain[best]) > 0) {
                best = i;
            }
        }
        return best;
    }
}
