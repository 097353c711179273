package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LoadLimitTest {
    /** 0.9 of 104.1 lbf on a head that draws with 62.09 of each 50. */
    @Test
    void namesWhatGivesFirst() {
        var headed = LoadLimit.of(Cleats.workedStrip(), Cleats.workedScrew(12.7));

        assertThat(headed.weakest()).isEqualTo(WeakLink.PULL_THROUGH);
        assertThat(headed.weakest().words()).isEqualTo("the head is drawn through the strip");
        assertThat(headed.weight() / Cleats.POUND).isCloseTo(50 * 0.9 * 104.1 / 62.09, within(0.1));
    }

    @Test
    void usesExactlyAllAtTheLimitAndMoreBeyond() {
        var random = new SplittableRandom(41);
        var seen = EnumSet.noneOf(WeakLink.class);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var strip = Cleats.anyStrip(random);
            var screw = Cleats.anyScrew(random);
            var limit = LoadLimit.of(strip, screw);
            var use = screw.use(strip.weighing(limit.weight()).perScrew());
            seen.add(limit.weakest());

            assertThat(use.most()).isCloseTo(1, within(1e-9));
            assertThat(use.weakest()).isEqualTo(limit.weakest());
            assertThat(Math.max(Math.max(use.withdrawal(), use.lateral()), Math.max(use.combined(), use.pullThrough())))
                    .isCloseTo(1, within(1e-9));
            assertThat(screw.use(strip.weighing(limit.weight() * 1.01).perScrew())
                            .most())
                    .isGreaterThan(1);
            assertThat(LoadLimit.of(strip.weighing(17), screw).weight())
                    .isCloseTo(limit.weight(), within(1e-9 * limit.weight()));
        }
        assertThat(seen).contains(WeakLink.LATERAL, WeakLink.COMBINED, WeakLink.PULL_THROUGH);
    }

    @Test
    void neverGrowsWithReachGapShareOrLessBelow() {
        var random = new SplittableRandom(42);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var strip = Cleats.anyStrip(random);
            var hanging = strip.hanging();
            var screw = Cleats.anyScrew(random);
            double limit = LoadLimit.of(strip, screw).weight() * (1 + 1e-12);
            double more = random.nextDouble(0, 100);
            var through = screw.through();
            var gapped = new ScrewedThrough(
                    through.thickness(), through.gravity(), through.gap() + more / 5, through.head());
            var far = new Hanging(hanging.weight(), hanging.centre() + more, hanging.drop(), hanging.bevel());
            var low = new Hanging(hanging.weight(), hanging.centre(), hanging.drop() + more, hanging.bevel());

            assertThat(limit(far, strip, screw)).isLessThanOrEqualTo(limit);
            assertThat(limit(low, strip, screw) * (1 + 1e-12))
                    .isGreaterThanOrEqualTo(limit / (1 + 1e-12) * (1 - 1e-12));
            assertThat(LoadLimit.of(
                                    new StripPull(
                                            hanging, strip.pullHeight(), strip.screwHeight(), strip.share() * 1.3),
                                    screw)
                            .weight())
                    .isLessThanOrEqualTo(limit);
            assertThat(LoadLimit.of(strip, new WallScrew(screw.fastener(), gapped, screw.into(), screw.duration()))
                            .weight())
                    .isLessThanOrEqualTo(limit);
        }
    }

    private static double limit(Hanging hanging, StripPull strip, WallScrew screw) {
        return LoadLimit.of(new StripPull(hanging, strip.pullHeight(), strip.screwHeight(), strip.share()), screw)
                .weight();
    }

    @Test
    void isNothingForAScrewThatMissesTheStud() {
        var missing = new WallScrew(
                Cleats.workedScrew(0).fastener(),
                ScrewedThrough.countersunk(18, 0.42, 12.7),
                new ScrewedInto(0.42, 0, 0, ScrewedInto.Short.HOLDS_NOTHING),
                Cleats.workedScrew(0).duration());

        assertThat(LoadLimit.of(Cleats.workedStrip(), missing)).isEqualTo(new LoadLimit(0, WeakLink.WITHDRAWAL));
    }
}
