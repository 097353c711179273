package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DowelBearingTest {
    /** NDS Table 12.3.3, fasteners below 1/4 in, as quoted [S]. */
    @ParameterizedTest
    @CsvSource({"0.36, 2550", "0.42, 3350", "0.43, 3500", "0.46, 4000", "0.50, 4650", "0.55, 5550", "0.67, 7950"})
    void pressesThinFastenersAsTheTablePrints(double gravity, double psi) {
        assertThat(DowelBearing.small(gravity) / Customary.PSI).isCloseTo(psi, within(1e-9));
        assertThat(DowelBearing.along(NumberedScrew.NO_14, gravity)).isEqualTo(DowelBearing.small(gravity));
        assertThat(DowelBearing.across(CommonNail.SIX_PENNY, gravity)).isEqualTo(DowelBearing.small(gravity));
    }

    /** The formulas of the same table for 1/4 in and more [S], rounded to 50 psi. */
    @Test
    void pressesThickFastenersByTheGrain() {
        assertThat(DowelBearing.along(LagScrew.QUARTER, 0.5) / Customary.PSI).isCloseTo(5600, within(1e-9));
        assertThat(DowelBearing.across(LagScrew.QUARTER, 0.5) / Customary.PSI).isCloseTo(4450, within(1e-9));
        assertThat(DowelBearing.across(LagScrew.HALF, 0.5) / Customary.PSI).isCloseTo(3150, within(1e-9));
    }
}
