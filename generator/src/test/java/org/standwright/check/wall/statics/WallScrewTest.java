package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.standwright.check.fastener.CommonNail;
import org.standwright.check.fastener.DowelBearing;
import org.standwright.check.fastener.GappedYield;
import org.standwright.check.fastener.LagScrew;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.fastener.SingleShear;
import org.standwright.check.fastener.YieldMode;
import org.standwright.check.fastener.YieldModes;

class WallScrewTest {
    /** Own calculation (references 3.5): 83.42 lbf on the stud, 51.64 lbf = 229.7 N through plasterboard 1/2 in thick. */
    @Test
    void carriesMuchLessThroughPlasterboard() {
        double direct = lasting(onStudAlone()).lateral();
        double gapped = lasting(Cleats.workedScrew(12.7)).lateral();

        assertThat(direct / Cleats.POUND).isCloseTo(83.42, within(0.01));
        assertThat(gapped / Cleats.POUND).isCloseTo(51.64, within(0.01));
        assertThat(gapped).isCloseTo(229.7, within(0.05));
    }

    /** The same 1.75 in of screw in the stud, without the gap: 2.5 in long. */
    private static WallScrew onStudAlone() {
        var through = ScrewedThrough.countersunk(0.75 * Cleats.INCH, 0.42, 0);
        return WallScrew.intoStud(NumberedScrew.NO_10, 2.5 * Cleats.INCH, through, 0.42, LoadDuration.PERMANENT);
    }

    /** 250 mm long, 166.7 mm of them threaded, 19.05 mm before the stud: it ends 142.05 mm beyond the back of it. */
    @Test
    void countsNoThreadBeyondTheBackOfAStud() {
        var through = ScrewedThrough.countersunk(0.75 * Cleats.INCH, 0.42, 0);

        var within = WallScrew.intoStud(NumberedScrew.NO_10, 107.9, through, 0.42, LoadDuration.PERMANENT);
        var beyond = WallScrew.intoStud(NumberedScrew.NO_10, 250, through, 0.42, LoadDuration.PERMANENT);

        // 107.9 mm: 71.93 mm of thread, all of it in the 88.85 mm that are in the stud
        assertThat(within.into().thread()).isCloseTo(107.9 * 2 / 3, within(1e-9));
        assertThat(beyond.into().penetration()).isCloseTo(88.9, within(1e-9));
        assertThat(beyond.into().thread()).isCloseTo(250 * 2 / 3.0 - 142.05, within(1e-9));
        assertThat(beyond.isRated()).isFalse();
    }

    private static WallScrew lasting(WallScrew screw) {
        return new WallScrew(screw.fastener(), screw.through(), screw.into(), LoadDuration.TEN_YEARS);
    }

    /** Own example (references 3.8): W'p 150.4, Z' 46.5, Z'α 114.66 lbf; 0.584, linear 0.951. Pull-through 104.1 lbf. */
    @Test
    void holdsTheWorkedExample() {
        var screw = Cleats.workedScrew(12.7);
        var load = Cleats.workedStrip().perScrew();
        var use = screw.use(load);

        assertThat(screw.into().thread()).isCloseTo(1.75 * Cleats.INCH, within(1e-9));
        assertThat(screw.isRated()).isTrue();
        assertThat(screw.withdrawal() / Cleats.POUND).isCloseTo(150.4, within(0.05));
        assertThat(screw.lateral() / Cleats.POUND).isCloseTo(46.5, within(0.05));
        assertThat(screw.mode()).contains(YieldMode.III_SIDE);
        assertThat(use.combined()).isCloseTo(0.584, within(0.001));
        assertThat(use.linear()).isCloseTo(0.951, within(0.001));
        assertThat(Math.hypot(load.out(), load.sideways()) / use.combined() / Cleats.POUND)
                .isCloseTo(114.66, within(0.05));
        assertThat(screw.pullThrough().orElseThrow() / Cleats.POUND).isCloseTo(0.9 * 104.1, within(0.05));
        assertThat(use.weakest()).isEqualTo(WeakLink.PULL_THROUGH);
    }

    @Test
    void ratesNoCountersunkHeadAndNoThinStrip() {
        assertThat(onStudAlone().pullThrough()).isEmpty();
        assertThat(onStudAlone().use(new ScrewLoad(100, 0)).pullThrough()).isZero();
        var thin = ScrewedThrough.roundHead(6, 0.42, 0, 9);
        assertThat(WallScrew.intoStud(NumberedScrew.NO_10, 60, thin, 0.42, LoadDuration.PERMANENT)
                        .pullThrough())
                .isEmpty();
    }

    /** A head gains nothing from a short load, so that no source's silence is read in its favour. */
    @Test
    void givesAHeadNoMoreForAShortLoad() {
        var through = ScrewedThrough.roundHead(19.05, 0.42, 0, NumberedScrew.NO_10.head());
        var brief = WallScrew.intoStud(NumberedScrew.NO_10, 70, through, 0.42, LoadDuration.TEN_MINUTES);

        assertThat(brief.pullThrough().orElseThrow() / Cleats.POUND).isCloseTo(104.1, within(0.05));
    }

    /** 6 D of a #10 is 28.956 mm; NDS as quoted. */
    @Test
    void holdsNothingInAStudWithLessThanTheLeastThread() {
        var just = into(18 + 12.7 + 28.96);
        var less = into(18 + 12.7 + 28.95);

        assertThat(just.isRated()).isTrue();
        assertThat(just.withdrawal()).isPositive();
        assertThat(less.isRated()).isFalse();
        assertThat(less.withdrawal()).isZero();
        assertThat(less.lateral()).isZero();
        assertThat(less.mode()).isEmpty();
        assertThat(less.use(new ScrewLoad(1, 1)).most()).isInfinite();
        assertThat(less.use(new ScrewLoad(0, 0)).most()).isZero();
        assertThat(into(20).withdrawal()).isZero();
    }

    private static WallScrew into(double length) {
        var through = ScrewedThrough.countersunk(18, 0.42, 12.7);
        return WallScrew.intoStud(NumberedScrew.NO_10, length, through, 0.42, LoadDuration.PERMANENT);
    }

    /** 1800 G^1.5 D^0.75, 1/4 in at G 0.50: 225 lbf/in, NDS Table 12.2A as printed. */
    @Test
    void holdsALagByItsThread() {
        var through = ScrewedThrough.countersunk(19.05, 0.42, 12.7);
        var lag = WallScrew.lagIntoStud(LagScrew.QUARTER, 50, 25.4, through, 0.5, LoadDuration.TEN_YEARS);

        assertThat(lag.withdrawal() / Cleats.POUND).isCloseTo(225, within(0.5));
        assertThat(lag.isRated()).isTrue();
        assertThat(lag.lateral()).isPositive();
        assertThat(WallScrew.lagIntoStud(LagScrew.QUARTER, 50, 25.3, through, 0.5, LoadDuration.TEN_YEARS)
                        .lateral())
                .isZero();
    }

    /** The same joint put together by hand: Fe of both woods, half the tip off, Rd · 1.25 of a lag across the strip's grain. */
    @Test
    void carriesAsTheJointThatItIs() {
        double soft = DowelBearing.small(0.36);
        double hard = DowelBearing.small(0.5);
        var screw = NumberedScrew.NO_8;
        var shallow = WallScrew.intoHanger(
                screw, 25, ScrewedThrough.countersunk(12, 0.5, 0), 18, 0.36, LoadDuration.TEN_YEARS);
        var joint =
                new SingleShear(13 - screw.diameter(), 12, soft, hard, screw.root(), screw.bendingYield(), 0, false);

        assertThat(shallow.lateral()).isCloseTo(new YieldModes(joint).allowable(), within(1e-9));
        assertThat(shallow.mode()).contains(new YieldModes(joint).governing());

        var lag = WallScrew.lagIntoStud(
                LagScrew.THREE_EIGHTHS, 50, 40, ScrewedThrough.countersunk(18, 0.5, 12), 0.36, LoadDuration.TEN_YEARS);
        var thick = new SingleShear(
                50,
                18,
                DowelBearing.along(LagScrew.THREE_EIGHTHS, 0.36),
                hard,
                LagScrew.THREE_EIGHTHS.root(),
                LagScrew.THREE_EIGHTHS.bendingYield(),
                0,
                true);
        assertThat(lag.lateral()).isCloseTo(new GappedYield(thick, 12).allowable() / 1.25, within(1e-9));
    }

    /** #8 × 30 through a back 12 mm thick: 18 mm of thread in the hanger, 2850 · 0.42² · 0.164 lbf/in on each. */
    @Test
    void countsAScrewInAHangerThoughNothingRatesIt() {
        var back = ScrewedThrough.countersunk(12, 0.42, 0);
        var screw = WallScrew.intoHanger(NumberedScrew.NO_8, 30, back, 18, 0.42, LoadDuration.PERMANENT);

        assertThat(screw.isRated()).isFalse();
        assertThat(screw.withdrawal() / Cleats.POUND).isCloseTo(0.9 * 82.45 * 18 / 25.4, within(0.01));
        assertThat(screw.lateral()).isPositive();
        assertThatThrownBy(() -> WallScrew.intoHanger(NumberedScrew.NO_8, 31, back, 18, 0.42, LoadDuration.PERMANENT))
                .hasMessage(
                        "length of the screw is 31.0 mm, but must be no more than back and hanger together, 30.0 mm; "
                                + "take a shorter one.");
        assertThat(WallScrew.intoHanger(NumberedScrew.NO_8, 16, back, 18, 0.42, LoadDuration.PERMANENT)
                        .lateral())
                .isZero();
    }

    @Test
    void neverUsesLessUnderMoreLoadNorHoldsMoreAcrossAWiderGap() {
        var random = new SplittableRandom(31);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var screw = Cleats.anyScrew(random);
            var load = new ScrewLoad(random.nextDouble(0, 500), random.nextDouble(0, 500));
            double times = random.nextDouble(1, 3);
            var more = screw.use(new ScrewLoad(load.out() * times, load.sideways() * times));
            var use = screw.use(load);
            var through = screw.through();
            var wider = new WallScrew(
                    screw.fastener(),
                    new ScrewedThrough(
                            through.thickness(),
                            through.gravity(),
                            through.gap() + random.nextDouble(0, 20),
                            through.head()),
                    screw.into(),
                    screw.duration());

            assertThat(more.combined()).isCloseTo(use.combined() * times, within(1e-9 * (1 + more.combined())));
            assertThat(more.most()).isGreaterThanOrEqualTo(use.most());
            assertThat(use.linear()).isGreaterThanOrEqualTo(use.combined() * (1 - 1e-12));
            assertThat(wider.lateral()).isLessThanOrEqualTo(screw.lateral() * (1 + 1e-12));
            assertThat(wider.withdrawal()).isEqualTo(screw.withdrawal());
            assertThat(screw.use(new ScrewLoad(load.out() * times, load.sideways()))
                            .linear())
                    .isGreaterThanOrEqualTo(use.linear());
        }
    }

    @Test
    void refusesWhatIsNoScrew() {
        var through = ScrewedThrough.countersunk(18, 0.42, 0);
        var into = new ScrewedInto(0.42, 40, 40, ScrewedInto.Short.HOLDS_NOTHING);

        assertThatThrownBy(() -> new WallScrew(CommonNail.SIX_PENNY, through, into, LoadDuration.PERMANENT))
                .hasMessage(
                        "a cleat's fastener is the nail 'SIX_PENNY', but must be a screw; take a wood screw or a lag.");
        assertThatThrownBy(() -> new ScrewedInto(0.42, 40, 41, ScrewedInto.Short.HOLDS_NOTHING))
                .hasMessage("thread in the wood is 41.0 mm, but must be no more than the penetration, 40.0 mm.");
        assertThatThrownBy(() -> ScrewedThrough.countersunk(18, 2, 0))
                .hasMessage("specific gravity of what the screw goes through is 2.0, but must lie between 0 and 1.5.");
        assertThatThrownBy(() -> ScrewedThrough.countersunk(18, 0.42, -1)).hasMessageContaining("gap behind the strip");
        assertThatThrownBy(() -> ScrewedThrough.roundHead(18, 0.42, 0, 0)).hasMessageContaining("diameter of the head");
        assertThatThrownBy(() -> new ScrewLoad(-1, 0)).hasMessageContaining("pull on a screw is -1.0 N");
    }
}
