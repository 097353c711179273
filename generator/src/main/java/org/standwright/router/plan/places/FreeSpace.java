package org.standwright.router.plan.places;

import java.util.Arrays;

/**
 * What is free of a board: all rectangles that no larger free one holds. They overlap. After K. K. Lai, J. W. M. Chan,
 * Developing a simulated annealing algorithm for the cutting stock problem, Computers and Industrial Engineering 1997.
 */
final class FreeSpace {
    private static final int FIELDS = 4;

    private int[] at;
    private int end;
    /** Those that a piece overlaps, while it is taken off. */
    private int[] split = new int[16 * FIELDS];

    private FreeSpace(int[] at, int end) {
        this.at = at;
        this.end = end;
    }

    static FreeSpace of(int length, int width) {
        var space = new FreeSpace(new int[16 * FIELDS], 0);
        space.add(0, 0, length, width);
        return space;
    }

    FreeSpace copy() {
        return new FreeSpace(Arrays.copyOf(at, end + 8 * FIELDS), end);
    }

    void reset(int length, int width) {
        end = 0;
        add(0, 0, length, width);
    }

    int count() {
        return end / FIELDS;
    }

    int x(int index) {
        return at[index * FIELDS];
    }

    int y(int index) {
        return at[index * FIELDS + 1];
    }

    int length(int index) {
        return at[index * FIELDS + 2] - at[index * FIELDS];
    }

    int width(int index) {
        return at[index * FIELDS + 3] - at[index * FIELDS + 1];
    }

    /** Takes a rectangle off: each that it overlaps becomes the up to four beside it. */
    void take(int x, int y, int length, int width) {
        int endX = x + length;
        int endY = y + width;
        int kept = 0;
        int splits = 0;
        for (int i = 0; i < end; i += FIELDS) {
            if (at[i] >= endX || at[i + 2] <= x || at[i + 1] >= endY || at[i + 3] <= y) {
                copy(i, at, kept);
                kept += FIELDS;
            } else {
                split = grown(split, splits);
                copy(i, split, splits);
                splits += FIELDS;
            }
        }
        end = kept;
        for (int i = 0; i < splits; i += FIELDS) {
            int x0 = split[i];
            int y0 = split[i + 1];
            int x1 = split[i + 2];
            int y1 = split[i + 3];
            if (x0 < x) {
                offer(kept, x0, y0, x, y1);
            }
            if (x1 > endX) {
                offer(kept, endX, y0, x1, y1);
            }
            if (y0 < y) {
                offer(kept, x0, y0, x1, y);
            }
            if (y1 > endY) {
                offer(kept, x0, endY, x1, y1);
            }
        }
    }

    private void copy(int from, int[] to, int place) {
        to[place] = at[from];
        to[place + 1] = at[from + 1];
        to[place + 2] = at[from + 2];
        to[place + 3] = at[from + 3];
    }

    private static int[] grown(int[] array, int used) {
        return used < array.length ? array : Arrays.copyOf(array, 2 * used);
    }

    /** Adds one unless another holds it; drops what it holds of the new ones, from {@code fresh} on. */
    private void offer(int fresh, int x0, int y0, int x1, int y1) {
        for (int i = 0; i < end; i += FIELDS) {
            if (at[i] <= x0 && at[i + 1] <= y0 && at[i + 2] >= x1 && at[i + 3] >= y1) {
                return;
            }
        }
        int kept = fresh;
        for (int i = fresh; i < end; i += FIELDS) {
            if (!(x0 <= at[i] && y0 <= at[i + 1] && x1 >= at[i + 2] && y1 >= at[i + 3])) {
                copy(i, at, kept);
                kept += FIELDS;
            }
        }
        end = kept;
        add(x0, y0, x1, y1);
    }

    private void add(int x0, int y0, int x1, int y1) {
        at = grown(at, end);
        at[end] = x0;
        at[end + 1] = y0;
        at[end + 2] = x1;
        at[end + 3] = y1;
        end += FIELDS;
    }
}
