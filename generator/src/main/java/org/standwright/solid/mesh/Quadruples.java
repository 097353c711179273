package org.standwright.solid.mesh;

import java.util.Arrays;

/** Numbers four whole numbers at a time, from 0 as they come: equal ones get equal numbers. */
public final class Quadruples {
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private long[] members = new long[4 * 64];
    private int count;
    /** One more than the number of the quadruple in each slot, 0 in a free one; at most half are taken. */
    private int[] slots = new int[2 * 64];

    public int number(long a, long b, long c, long d) {
        if (2 * count == slots.length) {
            grow();
        }
        int slot = slot(a, b, c, d);
        if (slots[slot] == 0) {
            add(a, b, c, d);
            slots[slot] = count;
        }
        return slots[slot] - 1;
    }

    int count() {
        return count;
    }

    /** Member 0..3 of a quadruple. */
    long member(int number, int place) {
        return members[4 * number + place];
    }

    /** Where the quadruple stands, or the free slot where it belongs. */
    private int slot(long a, long b, long c, long d) {
        long hash = (((a * SPREAD + b) * SPREAD + c) * SPREAD + d) * SPREAD;
        int slot = (int) (hash >>> 32) & slots.length - 1;
        while (slots[slot] != 0 && !isAt(4 * (slots[slot] - 1), a, b, c, d)) {
            slot = slot + 1 & slots.length - 1;
        }
        return slot;
    }

    private boolean isAt(int at, long a, long b, long c, long d) {
        return members[at] == a && members[at + 1] == b && members[at + 2] == c && members[at + 3] == d;
    }

    private void add(long a, long b, long c, long d) {
        int at = 4 * count++;
        members[at] = a;
        members[at + 1] = b;
        members[at + 2] = c;
        members[at + 3] = d;
    }

    private void grow() {
        members = Arrays.copyOf(members, 2 * members.length);
        slots = new int[2 * slots.length];
        for (int i = 0; i < count; i++) {
            slots[slot(members[4 * i], members[4 * i + 1], members[4 * i + 2], members[4 * i + 3])] = i + 1;
        }
    }
}
