package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BevelRipTest {
    /** Board 6 in wide, 3/4 in thick, kerf 1/8 in, 45°: faces of 3.28661 and 2.53661 in. Own derivation, own example. */
    @Test
    void dividesTheWorkedBoard() {
        var rip = new BevelRip(6 * 25.4, 0.75 * 25.4, 0.125 * 25.4, 45);

        assertThat(rip.longFace() / 25.4).isCloseTo(3.28661, within(1e-5));
        assertThat(rip.shortFace() / 25.4).isCloseTo(2.53661, within(1e-5));
    }

    /** 200 x 18 mm, kerf 3.2, 45°: 106.737 and 88.737 mm. Own derivation, own example. */
    @Test
    void dividesTheWorkedMetricBoard() {
        var rip = new BevelRip(200, 18, 3.2, 45);

        assertThat(rip.longFace()).isCloseTo(106.737, within(1e-3));
        assertThat(rip.shortFace()).isCloseTo(88.737, within(1e-3));
    }

    /** The section's area is shared out without a rest: two strips and what the blade takes. */
    @ParameterizedTest
    @CsvSource({"150, 18, 3.2, 45", "120, 12, 1.8, 30", "90, 19, 2.4, 40"})
    void leavesNoWoodOver(double width, double thickness, double kerf, double tilt) {
        var rip = new BevelRip(width, thickness, kerf, tilt);
        double strip = (rip.longFace() + rip.shortFace()) / 2 * thickness;
        double bladeLength = thickness / Math.cos(Math.toRadians(tilt));

        assertThat(2 * strip + bladeLength * kerf).isCloseTo(width * thickness, within(1e-9));
    }
}
