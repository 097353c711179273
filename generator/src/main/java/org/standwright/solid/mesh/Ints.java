package org.standwright.solid.mesh;

import java.util.Arrays;

/** A growing list of whole numbers. */
final class Ints {
    private int[] values;
    private int count;

    Ints(int capacity) {
        values = new int[capacity];
    }

    void add(int value) {
        if (count == values.length) {
            values = Arrays.copyOf(values, 2 * count);
        }
        values[count++] = value;
    }

    int get(int place) {
        return values[place];
    }

    int count() {
        return count;
    }

    void clear() {
        count = 0;
    }
}
