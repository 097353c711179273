package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Cells of the NDS's tables 12L, 12N and 12J, quoted by a public source file [S]: as printed, and as the formula gives them. */
class LateralTest {
    @ParameterizedTest
    @CsvSource({
        "NO_8, 0.50, 0.5, 72.92, 73",
        "NO_10, 0.50, 0.5, 89.93, 90",
        "NO_14, 0.50, 0.5, 119.61, 120",
        "NO_10, 0.50, 1.5, 116.94, 117",
        "NO_12, 0.42, 0.5, 90.56, 91"
    })
    void carriesWhatTheTableOfWoodScrewsPrints(
            NumberedScrew screw, double gravity, double side, double formula, double printed) {
        double pounds = tenDiameters(screw, gravity, side) / Customary.POUND;

        assertThat(pounds).isCloseTo(formula, within(0.01)).isCloseTo(printed, within(1.0));
    }

    /** Of a piece of plywood 3/4 in thick on wood of G 0.42; own calculation. */
    @ParameterizedTest
    @CsvSource({"NO_6, 56.53", "NO_8, 68.56", "NO_10, 83.42", "NO_12, 100.19", "NO_14, 107.97"})
    void carriesThisMuchOfACabinet(NumberedScrew screw, double pounds) {
        assertThat(tenDiameters(screw, 0.42, 0.75) / Customary.POUND).isCloseTo(pounds, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "SIX_PENNY, 0.50, 0.75, 72.26, 72",
        "EIGHT_PENNY, 0.50, 0.75, 90.32, 90",
        "TEN_PENNY, 0.50, 0.75, 105.32, 105",
        "SIXTEEN_PENNY, 0.50, 0.75, 120.66, 121",
        "SIX_PENNY, 0.50, 1, 72.26, 72",
        "EIGHT_PENNY, 0.50, 1, 97.11, 97",
        "TEN_PENNY, 0.50, 1, 117.59, 118",
        "SIXTEEN_PENNY, 0.50, 1, 140.89, 141",
        "SIXTEEN_PENNY, 0.42, 1.5, 119.59, 120"
    })
    void carriesWhatTheTableOfNailsPrints(
            CommonNail nail, double gravity, double side, double formula, double printed) {
        double pounds = tenDiameters(nail, gravity, side) / Customary.POUND;

        assertThat(pounds).isCloseTo(formula, within(0.01)).isCloseTo(printed, within(1.0));
    }

    @ParameterizedTest
    @CsvSource({"QUARTER, 0.5, 119.07, 120", "THREE_EIGHTHS, 0.5, 148.24, 150", "HALF, 1.5, 394.22, 390"})
    void carriesWhatTheTableOfLagsPrints(LagScrew lag, double side, double formula, double printed) {
        var joint = SingleShear.along(lag, 8 * lag.diameter(), side * Customary.INCH, 0.5, 0.5);
        double pounds = new YieldModes(joint).allowable() / Customary.POUND;

        assertThat(pounds).isCloseTo(formula, within(0.01)).isCloseTo(printed, within(5.0));
    }

    @Test
    void carriesLessAcrossTheGrain() {
        var joint = SingleShear.across(LagScrew.QUARTER, 8 * 6.35, 12.7, 0.5, 0.5);
        double pounds = new YieldModes(joint).allowable() / Customary.POUND;

        assertThat(pounds).isCloseTo(82.25, within(0.01)).isCloseTo(80, within(5.0));
    }

    /** Solved example of the NDS's publisher, with Fe as it comes [S]: 105.10 lbf = 467.5 N. */
    @Test
    void carriesWhatThePublisherWorkedOut() {
        double bearing = DowelBearing.unroundedSmall(0.5) * Customary.PSI;
        var nail = CommonNail.TEN_PENNY;
        double main = (3 - 0.75) * Customary.INCH - nail.diameter();
        var joint = new SingleShear(
                main, 0.75 * Customary.INCH, bearing, bearing, nail.root(), nail.bendingYield(), 0, false);

        assertThat(new YieldModes(joint).allowable()).isCloseTo(467.5, within(0.1));
        assertThat(new YieldModes(joint).allowable() / Customary.POUND).isCloseTo(105.10, within(0.02));
    }

    /** A textbook's 16d nail, side 1.5 in and lm 2.0 in [S]: 141 lbf printed, 140.7 with Fe to 50 psi. */
    @Test
    void carriesWhatATextbookWorkedOut() {
        var nail = CommonNail.SIXTEEN_PENNY;
        double bearing = DowelBearing.small(0.5);
        var joint = new SingleShear(
                2 * Customary.INCH, 1.5 * Customary.INCH, bearing, bearing, nail.root(), nail.bendingYield(), 0, false);

        assertThat(new YieldModes(joint).allowable() / Customary.POUND).isCloseTo(141, within(0.5));
    }

    @Test
    void saysHowTheJointGives() {
        double inch = Customary.INCH;

        assertThat(governing(NumberedScrew.NO_10, 0.5 * inch)).isEqualTo(YieldMode.III_SIDE);
        assertThat(governing(NumberedScrew.NO_10, 1.5 * inch)).isEqualTo(YieldMode.IV);
        assertThat(governing(NumberedScrew.NO_10, 0.1 * inch)).isEqualTo(YieldMode.I_SIDE);
    }

    @ParameterizedTest
    @EnumSource(FastenerKind.class)
    void neverCarriesLessInMoreWoodDenserWoodOrByAThickerFastenerOfOneSteel(FastenerKind kind) {
        var random = new SplittableRandom(2);
        for (int i = 0; i < 2000; i++) {
            double gravity = random.nextDouble(0.3, 0.7);
            double side = random.nextDouble(3, 40);
            for (var fastener : Sizes.of(kind)) {
                double penetration = random.nextDouble(2, 12) * fastener.diameter();
                double here =
                        new YieldModes(SingleShear.along(fastener, penetration, side, gravity, gravity)).allowable();
                double deeper = penetration + random.nextDouble(0, 30);
                double denser = gravity + random.nextDouble(0, 0.2);
                assertThat(new YieldModes(SingleShear.along(fastener, deeper, side, gravity, gravity)).allowable())
                        .isGreaterThanOrEqualTo(here * (1 - 1e-12));
                assertThat(new YieldModes(SingleShear.along(fastener, penetration, side, denser, denser)).allowable())
                        .isGreaterThanOrEqualTo(here * (1 - 1e-12));
                assertThat(yieldOf(fastener.root() * random.nextDouble(1, 1.5), fastener, penetration, side, gravity))
                        .isGreaterThanOrEqualTo(
                                yieldOf(fastener.root(), fastener, penetration, side, gravity) * (1 - 1e-12));
            }
        }
    }

    /** The least of the six loads, before Rd, which steps up with the diameter. */
    private static double yieldOf(double root, Fastener fastener, double main, double side, double gravity) {
        double bearing = DowelBearing.small(gravity);
        var joint = new SingleShear(main, side, bearing, bearing, root, fastener.bendingYield(), 0, false);
        var modes = new YieldModes(joint);
        double least = Double.MAX_VALUE;
        for (var mode : YieldMode.values()) {
            least = Math.min(least, modes.yieldLoad(mode));
        }
        return least;
    }

    private static YieldMode governing(Fastener fastener, double side) {
        return new YieldModes(SingleShear.along(fastener, 10 * fastener.diameter(), side, 0.5, 0.5)).governing();
    }

    private static double tenDiameters(Fastener fastener, double gravity, double side) {
        var joint = SingleShear.along(fastener, 10 * fastener.diameter(), side * Customary.INCH, gravity, gravity);
        return new YieldModes(joint).allowable();
    }
}
