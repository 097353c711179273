package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class GappedYieldTest {
    /** The dowel equations without a gap are the six yield modes of the NDS: the check of a form taken from memory. */
    @Test
    void equalsTheYieldModesWithoutAGap() {
        var random = new SplittableRandom(3);
        for (int i = 0; i < 20_000; i++) {
            var joint = joint(random);
            for (var mode : YieldMode.values()) {
                double expected = new YieldModes(joint).yieldLoad(mode);
                assertThat(new GappedYield(joint, 0).yieldLoad(mode))
                        .as(mode + " of " + joint)
                        .isCloseTo(expected, relative(expected));
            }
            assertThat(new GappedYield(joint, 0).allowable())
                    .isCloseTo(new YieldModes(joint).allowable(), relative(new YieldModes(joint).allowable()));
        }
    }

    @Test
    void neverCarriesMoreAcrossAWiderGap() {
        var random = new SplittableRandom(4);
        for (int i = 0; i < 5_000; i++) {
            var joint = joint(random);
            double gap = random.nextDouble(0, 50);
            assertThat(new GappedYield(joint, gap + random.nextDouble(0, 50)).allowable())
                    .isLessThanOrEqualTo(new GappedYield(joint, gap).allowable());
        }
    }

    /** Across a very wide gap the fastener only bends where it enters: P = 2 M / g in mode IV, M = Fyb D³/6. */
    @Test
    void keepsItsDigitsAcrossAVeryWideGap() {
        var joint = new SingleShear(40, 18, 40, 40, 4, 600, 0, false);
        double moment = 600 * 64 / 6.0;

        assertThat(new GappedYield(joint, 1e9).yieldLoad(YieldMode.IV)).isCloseTo(2 * moment / 1e9, relative(1e-5));
    }

    /** A #10 through plywood 3/4 in thick and plasterboard 1/2 in thick into a stud; own calculation. */
    @Test
    void losesMuchOfAScrewInPlasterboard() {
        double bearing = DowelBearing.small(0.42);
        var screw = NumberedScrew.NO_10;
        var joint = new SingleShear(
                (1.75 - 0.19) * Customary.INCH,
                0.75 * Customary.INCH,
                bearing,
                bearing,
                screw.root(),
                screw.bendingYield(),
                0,
                false);

        assertThat(new GappedYield(joint, 0).allowable() / Customary.POUND).isCloseTo(83.42, within(0.01));
        assertThat(new GappedYield(joint, 0).governing()).isEqualTo(YieldMode.III_SIDE);
        assertThat(new GappedYield(joint, 12.7).allowable() / Customary.POUND).isCloseTo(51.64, within(0.01));
        assertThat(new GappedYield(joint, 12.7).allowable()).isCloseTo(229.7, within(0.05));
    }

    private static SingleShear joint(SplittableRandom random) {
        return new SingleShear(
                random.nextDouble(5, 120),
                random.nextDouble(2, 60),
                random.nextDouble(8, 80),
                random.nextDouble(8, 80),
                random.nextDouble(1, 12),
                random.nextDouble(200, 900),
                random.nextDouble(0, 90),
                random.nextBoolean());
    }

    private static Offset<Double> relative(double expected) {
        return within(1e-9 * expected);
    }
}
