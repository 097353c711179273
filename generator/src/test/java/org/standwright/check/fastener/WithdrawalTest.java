package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class WithdrawalTest {
    /** Eq. 12.2-1 and 12.2-2 of the NDS, the cells of its tables 12.2A to C beside them [C formula]; the cells as printed below. */
    @ParameterizedTest
    @CsvSource({
        "NO_6, 0.42, 69.38", "NO_6, 0.50, 98.33", "NO_6, 0.55, 118.97",
        "NO_8, 0.42, 82.45", "NO_8, 0.50, 116.85", "NO_8, 0.55, 141.39",
        "NO_10, 0.42, 95.52", "NO_10, 0.50, 135.38", "NO_10, 0.55, 163.80",
        "NO_12, 0.42, 108.59", "NO_12, 0.50, 153.90", "NO_12, 0.55, 186.22",
        "NO_14, 0.42, 121.66", "NO_14, 0.50, 172.42", "NO_14, 0.55, 208.63"
    })
    void holdsAWoodScrewByItsThread(NumberedScrew screw, double gravity, double poundsPerInch) {
        assertThat(inPoundsPerInch(screw, gravity)).isCloseTo(poundsPerInch, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "QUARTER, 0.42, 173.22", "QUARTER, 0.50, 225.00", "QUARTER, 0.55, 259.58",
        "FIVE_SIXTEENTHS, 0.42, 204.78", "FIVE_SIXTEENTHS, 0.50, 265.99", "FIVE_SIXTEENTHS, 0.55, 306.87",
        "THREE_EIGHTHS, 0.42, 234.78", "THREE_EIGHTHS, 0.50, 304.97", "THREE_EIGHTHS, 0.55, 351.84"
    })
    void holdsALagScrewByItsThread(LagScrew lag, double gravity, double poundsPerInch) {
        assertThat(inPoundsPerInch(lag, gravity)).isCloseTo(poundsPerInch, within(0.01));
    }

    @ParameterizedTest
    @CsvSource({
        "EIGHT_PENNY, 0.42, 20.67", "EIGHT_PENNY, 0.50, 31.96",
        "TEN_PENNY, 0.42, 23.35", "TEN_PENNY, 0.50, 36.10",
        "SIXTEEN_PENNY, 0.42, 25.56", "SIXTEEN_PENNY, 0.50, 39.52"
    })
    void holdsANailByItsShank(CommonNail nail, double gravity, double poundsPerInch) {
        assertThat(inPoundsPerInch(nail, gravity)).isCloseTo(poundsPerInch, within(0.01));
    }

    /** NDS tables 12.2A to 12.2C, the cells as printed [C of the screws' and lags' equations, S of the print]. */
    @Test
    void agreesWithThePrintedCells() {
        assertThat(inPoundsPerInch(NumberedScrew.NO_8, 0.42)).isCloseTo(82, within(0.5));
        assertThat(inPoundsPerInch(NumberedScrew.NO_10, 0.50)).isCloseTo(135, within(0.5));
        assertThat(inPoundsPerInch(LagScrew.QUARTER, 0.50)).isCloseTo(225, within(0.5));
        assertThat(inPoundsPerInch(LagScrew.THREE_EIGHTHS, 0.42)).isCloseTo(235, within(0.5));
        assertThat(inPoundsPerInch(LagScrew.HALF, 0.50)).isCloseTo(378, within(0.5));
        assertThat(inPoundsPerInch(LagScrew.HALF, 0.55)).isCloseTo(437, within(0.5));
        assertThat(inPoundsPerInch(CommonNail.EIGHT_PENNY, 0.50)).isCloseTo(32, within(0.5));
        assertThat(inPoundsPerInch(CommonNail.SIXTEEN_PENNY, 0.42)).isCloseTo(26, within(0.5));
    }

    /** Solved examples of the NDS's publisher [S]: 49.5 lbf and 955 lbf (4247.9 N). */
    @Test
    void givesWhatThePublisherWorkedOut() {
        double nail = new Withdrawal(CommonNail.EIGHT_PENNY, 0.42).allowable(2.395 * 25.4, LoadDuration.TEN_YEARS);
        double lag = new Withdrawal(LagScrew.HALF, 0.55).allowable(2.1875 * 25.4, LoadDuration.TEN_YEARS);

        assertThat(nail / Customary.POUND).isCloseTo(49.5, within(0.1));
        assertThat(lag / Customary.POUND).isCloseTo(955, within(1.0));
        assertThat(lag).isCloseTo(4247.9, within(4.0));
    }

    /** Wood Handbook, chapter 8, in both of its forms [S]: 108.25 G² D L in N and mm is 15,700 G² D L in lbf and in. */
    @Test
    void tellsWhatDrawsAScrewOut() {
        double ultimate = 25 * new Withdrawal(NumberedScrew.NO_8, 0.42).ultimatePerMm();

        assertThat(ultimate).isCloseTo(1988.5, within(0.1));
        assertThat(ultimate).isCloseTo(108.25 * 0.42 * 0.42 * 0.164 * 25.4 * 25, within(0.3));
        assertThat(new Withdrawal(CommonNail.SIX_PENNY, 0.5).ultimatePerMm())
                .isCloseTo(54.12 * StrictMath.pow(0.5, 2.5) * 0.113 * 25.4, within(0.01));
        assertThat(new Withdrawal(LagScrew.HALF, 0.5).ultimatePerMm())
                .isCloseTo(125.4 * StrictMath.pow(0.5, 1.5) * StrictMath.pow(12.7, 0.75), within(0.2));
    }

    /** NDS as quoted [S]: 6 D with the tip, of a lag 4 D without. */
    @Test
    void ratesNothingWithLessThanTheLeastPenetration() {
        var screw = new Withdrawal(NumberedScrew.NO_8, 0.42);
        var lag = new Withdrawal(LagScrew.QUARTER, 0.42);

        assertThat(screw.allowable(24.9, LoadDuration.TEN_YEARS)).isZero();
        assertThat(screw.allowable(25, LoadDuration.TEN_YEARS)).isCloseTo(361, within(0.5));
        assertThat(lag.allowable(25.3, LoadDuration.TEN_YEARS)).isZero();
        assertThat(lag.allowable(25.4, LoadDuration.TEN_YEARS)).isCloseTo(770.5, within(0.5));
    }

    /** NDS as quoted [C/S]: no withdrawal of screws and nails from end grain, three quarters of a lag's. */
    @Test
    void ratesOnlyLagsInEndGrain() {
        assertThat(new Withdrawal(NumberedScrew.NO_8, 0.42).allowableInEndGrain(40, LoadDuration.TEN_YEARS))
                .isZero();
        assertThat(new Withdrawal(CommonNail.SIX_PENNY, 0.42).allowableInEndGrain(40, LoadDuration.TEN_YEARS))
                .isZero();
        var lag = new Withdrawal(LagScrew.QUARTER, 0.42);
        assertThat(lag.allowableInEndGrain(40, LoadDuration.TEN_YEARS))
                .isCloseTo(0.75 * lag.allowable(40, LoadDuration.TEN_YEARS), within(1e-9));
    }

    /** NDS Table 2.3.2, as quoted [S]. */
    @Test
    void holdsLessOfWhatHangsForever() {
        var screw = new Withdrawal(NumberedScrew.NO_8, 0.42);

        assertThat(screw.allowable(40, LoadDuration.PERMANENT) / screw.allowable(40, LoadDuration.TEN_MINUTES))
                .isCloseTo(0.9 / 1.6, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(FastenerKind.class)
    void neverHoldsLessInMoreWoodDenserWoodOrByAThickerFastener(FastenerKind kind) {
        var sizes = Sizes.of(kind);
        var random = new SplittableRandom(1);
        for (int i = 0; i < 2000; i++) {
            double gravity = random.nextDouble(0.3, 0.8);
            double penetration = random.nextDouble(0, 120);
            for (int size = 0; size < sizes.size(); size++) {
                var here = new Withdrawal(sizes.get(size), gravity);
                double held = here.allowable(penetration, LoadDuration.TEN_YEARS);
                var denser = new Withdrawal(sizes.get(size), gravity + random.nextDouble(0, 0.2));
                assertThat(denser.allowable(penetration, LoadDuration.TEN_YEARS))
                        .isGreaterThanOrEqualTo(held);
                assertThat(here.allowable(penetration + random.nextDouble(0, 30), LoadDuration.TEN_YEARS))
                        .isGreaterThanOrEqualTo(held);
                if (size > 0) {
                    assertThat(here.perMm()).isGreaterThan(new Withdrawal(sizes.get(size - 1), gravity).perMm());
                }
            }
        }
    }

    private static double inPoundsPerInch(Fastener fastener, double gravity) {
        return new Withdrawal(fastener, gravity).perMm() / Customary.POUND_PER_INCH;
    }
}
