package org.standwright.solid.layer;

import java.util.Arrays;

/** The pieces of an arrangement: each joins two spots, once, and knows the steps of rings that run along it. */
final class Pieces {
    private static final int NONE = -1;

    private int[] froms = new int[128];
    private int[] tos = new int[128];
    private int[] newest = new int[128];
    private int[] older = new int[128];
    private int[] table = emptyTable(512);
    private int count;

    /** The piece between two spots along which a step runs, a new one if there is none yet. */
    int join(int from, int to, int step) {
        int slot = slot(from, to);
        if (table[slot] == NONE) {
            if (4 * count >= table.length) {
                grow();
                slot = slot(from, to);
            }
            table[slot] = add(from, to);
        }
        int piece = table[slot];
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

    private int add(int from, int to) {
        if (count == froms.length) {
            froms = Arrays.copyOf(froms, 2 * count);
            tos = Arrays.copyOf(tos, 2 * count);
            newest = Arrays.copyOf(newest, 2 * count);
        }
        froms[count] = from;
        tos[count] = to;
        newest[count] = NONE;
        return count++;
    }

    private void remember(int step) {
        if (step >= older.length) {
            older = Arrays.copyOf(older, 2 * step);
        }
    }

    private int slot(int from, int to) {
        int low = Math.min(from, to);
        int high = Math.max(from, to);
        int slot = (low * 0x9E3779B1 ^ Integer.rotateLeft(high * 0x85EBCA6B, 15)) & table.length - 1;
        while (table[slot] != NONE && !joins(table[slot], low, high)) {
            slot = slot + 1 & table.length - 1;
        }
        return slot;
    }

    private boolean joins(int piece, int low, int high) {
        return Math.min(froms[piece], tos[piece]) == low && Math.max(froms[piece], tos[piece]) == high;
    }

    private void grow() {
        table = emptyTable(4 * table.length);
        for (int piece = 0; piece < count; piece++) {
            table[slot(froms[piece], tos[piece])] = piece;
        }
    }

    private static int[] emptyTable(int size) {
        var table = new int[size];
        Arrays.fill(table, NONE);
        return table;
    }
}
