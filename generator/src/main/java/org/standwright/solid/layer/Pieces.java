package org.standwright.solid.layer;

import java.util.Arrays;
import org.standwright.solid.mesh.Quadruples;

/** The pieces of an arrangement: each joins two spots, once, and knows the steps of rings that run along it. */
final class Pieces {
    private static final int NONE = -1;

    private int[] froms = new int[128];
    private int[] tos = new int[128];
    private int[] newest = new int[128];
    private int[] older = new int[128];
    private final Quadruples ends = new Quadruples();
    private int count;

    /** The piece between two spots along which a step runs, a new one if there is none yet. */
    int join(int from, int to, int step) {
        int piece = ends.number(Math.min(from, to), Math.max(from, to), 0, 0);
        if (piece == count) {
            add(from, to);
        }
        remember(step);
        older[step] = newest[piece];
        newest[piece] = step;
        return piece;
    }

    int count() {
        return count;
    }

    int from(int piece) {
        return froms[piece];
    }

    int to(int piece) {
        return tos[piece];
    }

    /** One of the steps along a piece; the others follow by {@link #older}. */
    int newest(int piece) {
        return newest[piece];
    }

    /** The step along the same piece before this one, less than 0 for none. */
    int older(int step) {
        return older[step];
    }

    /** Whether a single ring runs along a piece, once. */
    boolean isPlain(int piece) {
        return older[newest[piece]] == NONE;
    }

    private void add(int from, int to) {
        if (count == froms.length) {
            froms = Arrays.copyOf(froms, 2 * count);
            tos = Arrays.copyOf(tos, 2 * count);
            newest = Arrays.copyOf(newest, 2 * count);
        }
        froms[count] = from;
        tos[count] = to;
        newest[count] = NONE;
        count++;
    }

    private void remember(int step) {
        if (step >= older.length) {
            older = Arrays.copyOf(older, 2 * step);
        }
    }
}
