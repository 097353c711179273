package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberedScrewTest {
    /** NDS Appendix L3, as quoted, in mm [S]. */
    @Test
    void hasTheSizesOfTheStandard() {
        assertThat(NumberedScrew.NO_8.diameter()).isCloseTo(4.17, within(0.005));
        assertThat(NumberedScrew.NO_8.root()).isCloseTo(3.33, within(0.005));
        assertThat(NumberedScrew.NO_8.head()).isCloseTo(7.92, within(0.005));
        assertThat(NumberedScrew.NO_10.diameter()).isCloseTo(4.83, within(0.005));
        assertThat(NumberedScrew.NO_10.root()).isCloseTo(3.86, within(0.005));
        assertThat(NumberedScrew.NO_10.head()).isCloseTo(9.22, within(0.005));
    }

    @ParameterizedTest
    @CsvSource({"3.51, NO_6", "4, NO_6", "4.5, NO_8", "5, NO_10", "6, NO_12", "8, NO_14", "4.1656, NO_8"})
    void standsForTheThickestThatAMetricScrewIsAtLeast(double diameter, NumberedScrew screw) {
        assertThat(NumberedScrew.largestWithin(diameter)).contains(screw);
    }

    @Test
    void standsForNoScrewThinnerThanTheSmallest() {
        assertThat(NumberedScrew.largestWithin(3.5)).isEmpty();
    }

    /** max(4 D, 2 L / 3), NDS as quoted [S]. */
    @Test
    void isThreadedOverTwoThirds() {
        assertThat(NumberedScrew.NO_8.threadLength(45)).isCloseTo(30, within(1e-9));
        assertThat(NumberedScrew.NO_8.threadLength(20)).isCloseTo(16.66, within(0.01));
        assertThat(NumberedScrew.NO_8.threadLength(12)).isCloseTo(12, within(1e-9));
        assertThat(NumberedScrew.NO_8.threadBeyond(45, 20)).isCloseTo(25, within(1e-9));
        assertThat(NumberedScrew.NO_8.threadBeyond(45, 10)).isCloseTo(30, within(1e-9));
        assertThat(NumberedScrew.NO_8.threadBeyond(12, 18)).isZero();
    }
}
