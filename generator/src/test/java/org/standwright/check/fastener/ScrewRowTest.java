package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ScrewRowTest {
    /** Two screws at 70 and 430 mm: the front one carries 430/360 of a load at the end, by moments about the other. */
    @Test
    void loadsTheFrontScrewByTheLever() {
        assertThat(new ScrewRow(List.of(70.0, 430.0)).worst(0)).isCloseTo(430 / 360.0, within(1e-12));
        assertThat(new ScrewRow(List.of(70.0, 250.0, 430.0)).worst(0))
                .isCloseTo(1 / 3.0 + 250.0 * 180 / (2 * 180 * 180), within(1e-12));
    }

    @Test
    void sharesALoadInItsMiddleEvenly() {
        assertThat(new ScrewRow(List.of(0.0, 100.0, 200.0, 300.0)).worst(150)).isCloseTo(0.25, within(1e-12));
    }

    /** Two close together in front of a third: at 1000 the last is pushed by 1/3 + 900 x 200 / 60,000 (by hand). */
    @Test
    void loadsTheScrewThatIsFarthestFromTheirMiddle() {
        assertThat(new ScrewRow(List.of(0.0, 0.0, 300.0)).worst(1000)).isCloseTo(1 / 3.0 + 3, within(1e-12));
    }

    @Test
    void givesASingleScrewEverything() {
        assertThat(new ScrewRow(List.of(40.0)).worst(-200)).isEqualTo(1);
    }
}
