package org.standwright.router.plan.places;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.sheet.plan.Seeds;

/** Against a board of squares, each free or not. */
class FreeSpaceTest {
    private static final int SIDE = 9;

    static LongStream seeds() {
        return Seeds.fewOrMany(100, 5000);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void holdsAllLargestFreeRectanglesAndNoOther(long seed) {
        var random = new SplittableRandom(seed);
        var covered = new boolean[SIDE][SIDE];
        var space = FreeSpace.of(SIDE, SIDE);
        for (int taken = random.nextInt(1, 7); taken > 0; taken--) {
            int x = random.nextInt(SIDE);
            int y = random.nextInt(SIDE);
            int length = random.nextInt(1, Math.min(5, SIDE - x + 1));
            int width = random.nextInt(1, Math.min(5, SIDE - y + 1));
            space.take(x, y, length, width);
            for (int i = 0; i < length; i++) {
                for (int j = 0; j < width; j++) {
                    covered[x + i][y + j] = true;
                }
            }
        }
        var found = new TreeSet<String>();
        for (int i = 0; i < space.count(); i++) {
            found.add(text(space.x(i), space.y(i), space.length(i), space.width(i)));
        }

        assertThat(found).hasSize(space.count()).isEqualTo(largest(covered));
    }

    private static TreeSet<String> largest(boolean[][] covered) {
        var largest = new TreeSet<String>();
        for (int x = 0; x < SIDE; x++) {
            for (int y = 0; y < SIDE; y++) {
                for (int length = 1; x + length <= SIDE; length++) {
                    for (int width = 1; y + width <= SIDE; width++) {
                        if (isFree(covered, x, y, length, width)
                                && !isFree(covered, x - 1, y, length + 1, width)
                                && !isFree(covered, x, y - 1, length, width + 1)
                                && !isFree(covered, x, y, length + 1, width)
                                && !isFree(covered, x, y, length, width + 1)) {
                            largest.add(text(x, y, length, width));
                        }
                    }
                }
            }
        }
        return largest;
    }

    private static boolean isFree(boolean[][] covered, int x, int y, int length, int width) {
        if (x < 0 || y < 0 || x + length > SIDE || y + width > SIDE) {
            return false;
        }
        for (int i = x; i < x + length; i++) {
            for (int j = y; j < y + width; j++) {
                if (covered[i][j]) {
                    return false;
                }
            }
        }
        return true;
    }

    private static String text(int x, int y, int length, int width) {
        return length + "x" + width + "@" + x + "," + y;
    }
}
