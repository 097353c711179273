package org.standwright.sheet.bound;

import java.util.BitSet;
import java.util.Optional;

/**
 * Where cuts can matter along one side of a board: at sums of piece sizes (J. Herz, Recursive computational procedure
 * for two-dimensional stock cutting, 1972). Between two of them a panel is worth as much as at the lower one.
 */
final class Points {
    /** In rising order, from 0 on. */
    private final int[] at;
    /** For each point and each cut up to its middle, counted from the first point after 0: where what remains ends. */
    private final int[][] remains;

    private final long cuts;

    private Points(int[] at) {
        this.at = at;
        remains = new int[at.length][];
        long all = 0;
        for (int i = 0; i < at.length; i++) {
            int half = index(at[i] / 2);
            remains[i] = new int[half];
            for (int cut = 1; cut <= half; cut++) {
                remains[i][cut - 1] = index(at[i] - at[cut]);
            }
            all += half;
        }
        cuts = all;
    }

    /** Empty if there are more than so many. */
    static Optional<Points> of(int side, int[] sizes, int most) {
        var sums = new BitSet();
        sums.set(0);
        int count = 0;
        for (int point = 0; point >= 0; point = sums.nextSetBit(point + 1)) {
            if (++count > most) {
                return Optional.empty();
            }
            for (int size : sizes) {
                if (size <= side - point) {
                    sums.set(point + size);
                }
            }
        }
        return Optional.of(new Points(sums.stream().toArray()));
    }

    int count() {
        return at.length;
    }

    /** Of the last point that is not beyond. */
    int index(int size) {
        int low = 0;
        int high = at.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (at[middle] <= size) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    int[] remains(int point) {
        return remains[point];
    }

    /** Of all points together. */
    long cuts() {
        return cuts;
    }
}
