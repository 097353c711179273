package org.standwright.solid.layer;

import java.util.Arrays;

/** The spots that one side after another passes through, in order from its start to its end. */
final class SideHits {
    private final Spots spots;
    private final long[] byX;
    private final long[] byY;
    private long[] alongs = new long[16];
    private int[] hits = new int[16];
    private int count;

    SideHits(Spots spots) {
        this.spots = spots;
        byX = new long[spots.count()];
        byY = new long[spots.count()];
        for (int spot = 0; spot < byX.length; spot++) {
            byX[spot] = key(spots.x(spot), spot);
            byY[spot] = key(spots.y(spot), spot);
        }
        Arrays.sort(byX);
        Arrays.sort(byY);
    }

    private static long key(int place, int spot) {
        return (long) place << 32 | spot;
    }

    /** Finds the spots on a side; returns how many. The first and the last are its ends. */
    int find(Ring ring, int side) {
        int next = ring.next(side);
        int ax = ring.u(side);
        int ay = ring.v(side);
        int bx = ring.u(next);
        int by = ring.v(next);
        count = 0;
        boolean steep = Math.abs((long) by - ay) > Math.abs((long) bx - ax);
        int one = steep ? ax : ay;
        int other = steep ? bx : by;
        collect(steep ? byX : byY, Math.min(one, other), Math.max(one, other), new Passing(ax, ay, bx, by));
        sort();
        return count;
    }

    int spot(int hit) {
        return hits[hit];
    }

    /** Looks through the spots between two places along the axis on which the side is shorter. */
    private void collect(long[] sorted, int low, int high, Passing passing) {
        for (int i = first(sorted, low); i < sorted.length && (int) (sorted[i] >> 32) <= high; i++) {
            int spot = (int) sorted[i];
            int x = spots.x(spot);
            int y = spots.y(spot);
            if (passing.isThrough(x, y)) {
                add(spot, passing.along(x, y));
            }
        }
    }

    private static int first(long[] sorted, int low) {
        int found = Arrays.binarySearch(sorted, key(low, 0));
        return found < 0 ? -found - 1 : found;
    }

    private void add(int spot, long along) {
        if (count == hits.length) {
            hits = Arrays.copyOf(hits, 2 * count);
            alongs = Arrays.copyOf(alongs, 2 * count);
        }
        hits[count] = spot;
        alongs[count++] = along;
    }

    /** By insertion: most sides have two spots or three. */
    private void sort() {
        for (int i = 1; i < count; i++) {
            int spot = hits[i];
            long along = alongs[i];
            int j = i - 1;
            while (j >= 0 && alongs[j] > along) {
                alongs[j + 1] = alongs[j];
                hits[j + 1] = hits[j];
                j--;
            }
            alongs[j + 1] = along;
            hits[j + 1] = spot;
        }
    }
}
