package org.standwright.sheet.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ValuesTest {
    @Test
    void isThePowerOfTheAreaWhereBoardsAreSmall() {
        var values = new Values(10_000);

        assertThat(values.of(100, 100)).isEqualTo(StrictMath.pow(10_000, 1.2));
        assertThat(values.of(8, 4)).isCloseTo(64, within(1e-9)); // 32^1.2 = 2^6
        assertThat(values.of(0, 50)).isZero();
    }

    /** Steps of the table are 1/16384 of the largest board. */
    @Test
    void keepsTheSameProportionsWhereBoardsAreLarge() {
        long most = 7_808_000L * 3_904_000L;
        var values = new Values(most);
        double whole = values.of(7_808_000, 3_904_000);

        assertThat(values.of(3_904_000, 3_904_000) / whole).isCloseTo(StrictMath.pow(0.5, 1.2), within(1e-6));
        assertThat(values.of(780_800, 390_400) / whole).isCloseTo(StrictMath.pow(0.01, 1.2), within(1e-6));
    }

    @Test
    void prefersOneLargeRestToTwoSmallOnes() {
        for (var values : new Values[] {new Values(10_000), new Values(1_000_000_000_000L)}) {
            for (int side = 2; side <= 70; side += 7) {
                assertThat(values.of(side, 2L * side)).isGreaterThanOrEqualTo(2 * values.of(side, side));
            }
        }
    }

    @Test
    void growsWithTheArea() {
        var values = new Values(1_000_000);
        for (int area = 1; area + 997 < 1_000_000; area += 997) {
            assertThat(values.of(area + 997, 1)).isGreaterThan(values.of(area, 1));
        }
    }
}
