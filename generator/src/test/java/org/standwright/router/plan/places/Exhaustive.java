package org.standwright.router.plan.places;

import java.util.List;
import java.util.stream.IntStream;

/** The fewest square boards that hold some small rectangles, by trial of everything. */
record Exhaustive(int side, boolean turning) {
    int boards(List<int[]> pieces) {
        for (int boards = 1; ; boards++) {
            if (areSharedOut(pieces, 0, new int[boards])) {
                return boards;
            }
        }
    }

    /** @param sets the pieces of each board, a bit each */
    private boolean areSharedOut(List<int[]> pieces, int next, int[] sets) {
        if (next == pieces.size()) {
            return true;
        }
        for (int board = 0; board < sets.length; board++) {
            sets[board] |= 1 << next;
            if (area(pieces, sets[board]) <= side * side
                    && fits(pieces, sets[board], new boolean[side][side])
                    && areSharedOut(pieces, next + 1, sets)) {
                return true;
            }
            sets[board] &= ~(1 << next);
            if (sets[board] == 0) {
                return false;
            }
        }
        return false;
    }

    private static int area(List<int[]> pieces, int set) {
        return IntStream.range(0, pieces.size())
                .filter(piece -> (set >> piece & 1) == 1)
                .map(piece -> pieces.get(piece)[0] * pieces.get(piece)[1])
                .sum();
    }

    /** Lays the first of the pieces at every place. */
    private boolean fits(List<int[]> pieces, int set, boolean[][] covered) {
        if (set == 0) {
            return true;
        }
        int piece = Integer.numberOfTrailingZeros(set);
        int[] size = pieces.get(piece);
        for (int turned = 0; turned < (turning ? 2 : 1); turned++) {
            int length = size[turned];
            int width = size[1 - turned];
            for (int x = 0; x + length <= side; x++) {
                for (int y = 0; y + width <= side; y++) {
                    if (covers(covered, x, y, length, width, false)) {
                        covers(covered, x, y, length, width, true);
                        if (fits(pieces, set & set - 1, covered)) {
                            return true;
                        }
                        uncover(covered, x, y, length, width);
                    }
                }
            }
        }
        return false;
    }

    /** Whether all of it is free; then covers it if asked. */
    private static boolean covers(boolean[][] covered, int x, int y, int length, int width, boolean cover) {
        for (int i = x; i < x + length; i++) {
            for (int j = y; j < y + width; j++) {
                if (covered[i][j]) {
                    return false;
                }
                covered[i][j] = cover;
            }
        }
        return true;
    }

    private static void uncover(boolean[][] covered, int x, int y, int length, int width) {
        for (int i = x; i < x + length; i++) {
            for (int j = y; j < y + width; j++) {
                covered[i][j] = false;
            }
        }
    }
}
