package org.standwright.sheet.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class DiceTest {
    private static final long STEP = 0x9E3779B97F4A7C15L;

    @Test
    void fallsTheSameEverywhere() {
        var dice = new Dice(42);

        assertThat(IntStream.generate(() -> dice.below(100)).limit(12))
                .containsExactly(7, 79, 92, 24, 41, 46, 13, 89, 87, 12, 1, 78);
    }

    /** Java's SplittableRandom makes the same numbers: G. Steele, D. Lea, C. Flood, OOPSLA 2014. */
    @Test
    void takesTheHighHalfOfEachNumber() {
        var dice = new Dice(7);
        var same = new SplittableRandom(7 * STEP);
        same.nextLong(); // says when the first candidate is overlooked
        for (int i = 1; i < 1000; i++) {
            long high = same.nextLong() >>> 32;
            assertThat(dice.below(i)).isEqualTo((int) (high * i >> 32)).isBetween(0, i - 1);
        }
    }

    /** 5,000 of 100,000 expected; four standard deviations are 276. */
    @Test
    void overlooksOneInTwenty() {
        var dice = new Dice(1);

        assertThat(IntStream.range(0, 100_000).filter(i -> dice.overlooks()).count())
                .isBetween(5000L - 276, 5000L + 276);
    }

    /** 10,000 each expected; four standard deviations are 365. */
    @Test
    void fallsOnEachSideAsOften() {
        var dice = new Dice(2);
        var falls = new int[6];
        for (int i = 0; i < 60_000; i++) {
            falls[dice.below(6)]++;
        }
        assertThat(IntStream.of(falls)).allMatch(count -> Math.abs(count - 10_000) < 366);
    }
}
