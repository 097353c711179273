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

    /** Adds what {@code numbers} has in the places that others name. */
    void addAll(int[] numbers, Ints places) {
        int total = count + places.count;
        if (total > values.length) {
            values = Arrays.copyOf(values, total);
        }
        var from = places.values;
        for (int i = 0, to = count; to < total; i++, to++) {
            values[to] = numbers[from[i]];
        }
        count = total;
    }

    /** Adds three at once. */
    void add(int a, int b, int c) {
        if (count + 3 > values.length) {
            values = Arrays.copyOf(values, 2 * count + 3);
        }
        values[count] = a;
        values[count + 1] = b;
        values[count + 2] = c;
        count += 3;
    }

    int[] toArray() {
        return Arrays.copyOf(values, count);
    }

    void clear() {
        count = 0;
    }
}
