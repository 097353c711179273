package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class YieldSharesTest {
    /** Three thirds: 33.3 + 33.3 + 33.3 = 99.9; the first gets the tenth that is left over. */
    @Test
    void whatRoundingLeavesOverGoesToTheLargestRemainder() {
        assertThat(YieldShares.tenths(List.of(1L, 1L, 1L))).containsExactly(334, 333, 333);
        assertThat(YieldShares.tenths(List.of(2L, 1L))).containsExactly(667, 333);
    }

    @Test
    void sharesAlwaysAddUpToAHundredPercent() {
        var random = new SplittableRandom(5);
        for (int i = 0; i < 1000; i++) {
            var areas = random.longs(5, 0, 1L << 40).boxed().toList();
            assertThat(YieldShares.tenths(areas).stream()
                            .mapToInt(Integer::intValue)
                            .sum())
                    .isEqualTo(1000);
        }
    }
}
