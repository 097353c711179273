package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StripPullTest {
    /** Own derivation, own example (references 3.8): Fw 62.09 lbf = 276.2 N, Fv 25 lbf = 111.2 N, together 66.93 lbf. */
    @Test
    void loadsEachScrewAsTheWorkedExampleSays() {
        var load = Cleats.workedStrip().perScrew();

        assertThat(load.out() / Cleats.POUND).isCloseTo(62.09, within(0.01));
        assertThat(load.out()).isCloseTo(276.2, within(0.1));
        assertThat(load.sideways() / Cleats.POUND).isCloseTo(25, within(0.01));
        assertThat(load.sideways()).isCloseTo(111.2, within(0.1));
        assertThat(Math.hypot(load.out(), load.sideways()) / Cleats.POUND).isCloseTo(66.93, within(0.01));
        assertThat(Math.toDegrees(Math.atan2(load.out(), load.sideways()))).isCloseTo(68.07, within(0.01));
    }

    /**
     * The strip by itself: its screws pull in and hold up, its far edge leans on the wall; the wall strip's bevel bears T
     * outwards and W down. The far edge never has to pull.
     */
    @Test
    void balancesAboutTheEdgeAwayFromTheBevel() {
        var random = new SplittableRandom(21);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            int screws = random.nextInt(1, 9);
            var any = Cleats.anyStrip(random);
            var strip = StripPull.evenly(any.hanging(), any.pullHeight(), any.screwHeight(), screws);
            double off = random.nextDouble(100, 900);
            double[] sizes = FreeBody.balance(
                    new FreeBody.Line(-1, 0, 0, off + strip.screwHeight()),
                    new FreeBody.Line(0, 1, 0, off + strip.screwHeight()),
                    new FreeBody.Line(1, 0, 0, off),
                    sum(strip, off));

            assertThat(strip.perScrew().out() * screws / sizes[0]).isCloseTo(1, within(1e-9));
            assertThat(strip.perScrew().sideways() * screws / sizes[1]).isCloseTo(1, within(1e-9));
            assertThat(sizes[2]).isGreaterThan(-1e-9);
        }
    }

    /** T out at h and W down at t/2, as one force on its line of action. */
    private static FreeBody.Line sum(StripPull strip, double off) {
        var hanging = strip.hanging();
        return new FreeBody.Line(
                hanging.pull(), -hanging.weight(), hanging.bevel().thickness() / 2, off + strip.pullHeight());
    }

    @Test
    void loadsAScrewLessAmongMoreAndMoreBelowAHigherPull() {
        var random = new SplittableRandom(22);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var here = Cleats.anyStrip(random);
            double lower = here.screwHeight() * random.nextDouble(0.5, 1);
            double higher = here.pullHeight() * random.nextDouble(1, 2);
            double out = here.perScrew().out();

            assertThat(new StripPull(here.hanging(), here.pullHeight(), lower, here.share())
                            .perScrew()
                            .out())
                    .isGreaterThanOrEqualTo(out);
            assertThat(new StripPull(here.hanging(), higher, here.screwHeight(), here.share())
                            .perScrew()
                            .out())
                    .isGreaterThanOrEqualTo(out);
            assertThat(new StripPull(here.hanging(), here.pullHeight(), here.screwHeight(), here.share() * 0.7)
                            .perScrew()
                            .out())
                    .isLessThan(out);
        }
    }

    @Test
    void refusesScrewsThatCannotHoldIt() {
        assertThatThrownBy(() -> StripPull.evenly(Cleats.worked(), 70, 71, 2))
                .hasMessage(
                        "height of the screws over the strip's far edge is 71.0 mm, but must be no more than that of "
                                + "the pull, 70.0 mm; put them below the bevel.");
        assertThatThrownBy(() -> StripPull.evenly(Cleats.worked(), 70, 40, 0))
                .hasMessage("number of screws that count is 0, but must be at least 1.");
        assertThatThrownBy(() -> new StripPull(Cleats.worked(), 70, 40, 0)).hasMessageContaining("share of a screw");
        assertThatThrownBy(() -> StripPull.evenly(Cleats.worked(), 70, 0, 2)).hasMessageContaining("0.0 mm");
    }
}
