package org.standwright.check.fastener;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class EndGrainTest {
    /** A handbook of formulas [C]. */
    @Test
    void leavesTwoThirds() {
        assertThat(EndGrain.lateral(300)).isCloseTo(200, within(1e-9));
    }
}
