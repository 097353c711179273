package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.standwright.part.BevelRip;

class CleatBevelTest {
    /** tan(θ + φ) at μ 0.3: own derivation, own example. */
    @Test
    void letsGoLaterTheSteeperItIs() {
        assertThat(CleatBevel.usual(18).rideOut()).isCloseTo(1.857, within(0.001));
        assertThat(new CleatBevel(18, 30, 0.3).rideOut()).isCloseTo(1.061, within(0.001));
    }

    @Test
    void letsGoAtTheSumOfBothAngles() {
        var random = new SplittableRandom(11);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var bevel = Cleats.anyBevel(random);
            double angle = Math.toRadians(bevel.tilt()) + Math.atan(bevel.friction());
            assertThat(bevel.rideOut()).isCloseTo(Math.tan(angle), within(1e-9 * Math.tan(angle)));
        }
    }

    @Test
    void drawsWithItsLoadAtFortyFiveDegreesAndLessWhereFlatter() {
        assertThat(CleatBevel.usual(18).wedge()).isCloseTo(1, within(1e-12));
        assertThat(new CleatBevel(18, 30, 0.3).wedge()).isCloseTo(1 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void holdsOnlyByItsWedgeWithoutFriction() {
        var slick = new CleatBevel(18, 38, 0);

        assertThat(slick.rideOut()).isEqualTo(slick.wedge());
    }

    @Test
    void risesAsTheRipThatMadeItSays() {
        assertThat(CleatBevel.usual(18).rise()).isCloseTo(18, within(1e-9));
        assertThat(new CleatBevel(18, 33, 0.3).rise()).isEqualTo(new BevelRip(200, 18, 3.2, 33).rise());
    }

    @Test
    void refusesWhatNobodySaws() {
        assertThatThrownBy(() -> new CleatBevel(18, 20, 0.3))
                .hasMessage("tilt of the bevel is 20.0 °, but must lie in 30 to 45; 45 is usual.");
        assertThatThrownBy(() -> new CleatBevel(18, 46, 0.3)).hasMessageContaining("46.0");
        assertThatThrownBy(() -> new CleatBevel(18, Double.NaN, 0.3)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> new CleatBevel(0, 45, 0.3))
                .hasMessage("thickness of the strip is 0.0 mm, but must be more than 0.");
        assertThatThrownBy(() -> new CleatBevel(18, 45, 1))
                .hasMessage("friction is 1.0, but must be 0 or more and below 1; 0.3 is usual.");
        assertThatThrownBy(() -> new CleatBevel(18, 45, -0.1)).hasMessageContaining("friction is -0.1");
    }
}
