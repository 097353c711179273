package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CombinedLoadTest {
    /** NDS 12.4, as quoted [S]. */
    @Test
    void weighsBothDirections() {
        var alike = new CombinedLoad(100, 100);

        assertThat(alike.used(FastenerKind.WOOD_SCREW, 50, 50)).isCloseTo(0.70711, within(1e-5));
        assertThat(alike.used(FastenerKind.LAG_SCREW, 50, 50)).isCloseTo(0.70711, within(1e-5));
        assertThat(alike.used(FastenerKind.NAIL, 50, 50)).isCloseTo(1, within(1e-12));
        assertThat(alike.used(FastenerKind.WOOD_SCREW, 0, 0)).isZero();
    }

    /** A cleat's screw, 25 lbf down and 62.09 lbf out of the wall; own calculation: 0.584, the screen 0.951. */
    @Test
    void weighsACleatsScrew() {
        var screw = new CombinedLoad(0.9 * 51.64, 150.4);

        assertThat(screw.used(FastenerKind.WOOD_SCREW, 25, 62.09)).isCloseTo(0.584, within(0.001));
        assertThat(screw.linear(25, 62.09)).isCloseTo(0.951, within(0.001));
    }

    @Test
    void neverAsksLessByTheSimpleScreen() {
        var random = new SplittableRandom(5);
        for (int i = 0; i < 10_000; i++) {
            var any = new CombinedLoad(random.nextDouble(1, 1000), random.nextDouble(1, 1000));
            double sideways = random.nextDouble(0, 1000);
            double out = random.nextDouble(0, 1000);
            assertThat(any.used(FastenerKind.WOOD_SCREW, sideways, out))
                    .isLessThanOrEqualTo(any.linear(sideways, out) * (1 + 1e-12));
        }
    }
}
