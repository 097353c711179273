package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class KnockTest {
    private static final CleatBevel BEVEL = CleatBevel.usual(18);

    @Test
    void unhooksAHolderByItsWeightAndItsRise() {
        var knock = new Knock(4, Knock.Height.WITHIN_REACH, BEVEL);

        assertThat(knock.force()).isCloseTo(39.2266, within(1e-9));
        assertThat(knock.travel()).isCloseTo(18, within(1e-9));
    }

    @Test
    void asksForAStopAboveFiveKilogramsAndOverhead() {
        assertThat(new Knock(5, Knock.Height.WITHIN_REACH, BEVEL).needsStop()).isFalse();
        assertThat(new Knock(5.1, Knock.Height.WITHIN_REACH, BEVEL).needsStop()).isTrue();
        assertThat(new Knock(0.5, Knock.Height.OVERHEAD, BEVEL).needsStop()).isTrue();
    }

    @Test
    void refusesAHolderWithoutMass() {
        assertThatThrownBy(() -> new Knock(0, Knock.Height.OVERHEAD, BEVEL))
                .hasMessage("mass of the holder is 0.0 kg, but must be more than 0.");
    }
}
