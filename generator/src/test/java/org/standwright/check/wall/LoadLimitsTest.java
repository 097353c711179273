package org.standwright.check.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.wall.Hung.INCH;
import static org.standwright.check.wall.Hung.POUND;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.wall.Framing;

/** What may hang at most, on the wall of the worked example. */
class LoadLimitsTest {

    /**
     * Nothing hung: 150 mm out, 88.9 - 9.525 = 79.375 mm of drop, T = W (150 - 9.525) / 79.375 = 1.770 W. From end to end of
     * two studs each has half: Fw = (1.770 x 79.375 + 9.525) / (2 x 34.925) W = 2.148 W, Fv = W / 2. With W'p = 669.2 N and
     * Z' = 206.8 N: (0.25 / 206.8 + 2.148^2 / 669.2) / 2.205 = 0.003674 for each N: 272 N, 27.7 kg.
     */
    @Test
    void limitsABareStripByItsScrews() {
        var bare = new Hung();
        bare.holders = List.of();

        var limits = LoadLimits.of(bare.hung());

        assertThat(limits.holders()).isEmpty();
        assertThat(limits.strips()).hasSize(1);
        var limit = limits.strips().values().iterator().next();
        assertThat(limit.mass()).isCloseTo(27.75, within(0.1));
        assertThat(limit.weakest()).isEqualTo("the screw is bent and drawn out at once");
    }

    /** By cleat-combined in the worked example with the strip itself: 74.7 lbf, 33.9 kg. */
    @Test
    void limitsAStripAsItsWorstHolderHangs() {
        var limits = LoadLimits.of(new Hung().worked(50 * POUND, 8 * INCH, 6 * INCH));

        assertThat(limits.strips().values().iterator().next().mass()).isCloseTo(33.9, within(0.05));
    }

    /** Hanger screws take less than the strip's. */
    @Test
    void limitsAHolderByItsWeakestLink() {
        var limit = LoadLimits.of(new Hung().worked(20 * POUND, 8 * INCH, 6 * INCH))
                .holders()
                .get("unit");

        assertThat(limit.weakest()).isEqualTo("the hanger's screws give");
        assertThat(limit.mass()).isPositive();
    }

    @Test
    void limitsNothingWhereNoSourceRatesTheScrews() {
        var steel = new Hung();
        steel.framing = new Framing.SteelStuds(12.7, OptionalDouble.empty(), 0, List.of(406.4, 812.8), 40);

        assertThat(LoadLimits.of(steel.hung()).strips()).isEmpty();
        assertThat(LoadLimits.of(steel.hung()).holders()).isEmpty();
    }
}
