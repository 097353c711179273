package org.standwright.solid.layer;

import java.util.Arrays;

/** Points of the plane's grid, numbered as they come: one place, one number. */
final class Spots {
    private static final int EMPTY = -1;

    private int[] xs = new int[64];
    private int[] ys = new int[64];
    private int[] table = emptyTable(256);
    private int count;

    /** The number of a place, a new one if it has none yet. */
    int at(int x, int y) {
        int slot = slot(x, y);
        if (table[slot] == EMPTY) {
            if (4 * count >= table.length) {
                grow();
                slot = slot(x, y);
            }
            table[slot] = add(x, y);
        }
        return table[slot];
    }

    int count() {
        return count;
    }

    int x(int spot) {
        return xs[spot];
    }

    int y(int spot) {
        return ys[spot];
    }

    private int add(int x, int y) {
        if (count == xs.length) {
            xs = Arrays.copyOf(xs, 2 * count);
            ys = Arrays.copyOf(ys, 2 * count);
        }
        xs[count] = x;
        ys[count] = y;
        return count++;
    }

    private int slot(int x, int y) {
        int slot = (x * 0x9E3779B1 ^ Integer.rotateLeft(y * 0x85EBCA6B, 15)) & table.length - 1;
        while (table[slot] != EMPTY && (xs[table[slot]] != x || ys[table[slot]] != y)) {
            slot = slot + 1 & table.length - 1;
        }
        return slot;
    }

    private void grow() {
        table = emptyTable(4 * table.length);
        for (int spot = 0; spot < count; spot++) {
            table[slot(xs[spot], ys[spot])] = spot;
        }
    }

    private static int[] emptyTable(int size) {
        var table = new int[size];
        Arrays.fill(table, EMPTY);
        return table;
    }
}
