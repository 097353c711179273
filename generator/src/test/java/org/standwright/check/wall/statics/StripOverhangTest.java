package org.standwright.check.wall.statics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StripOverhangTest {
    /** 100 N, c 100, s 400, 18 × 80, E 9000: Z = 18 · 80²/6 = 19,200 mm³, I = 768,000 mm⁴. */
    @Test
    void bendsOnEdge() {
        var end = new StripOverhang(100, 400, 80, 18, 9000);

        assertThat(end.stress(100)).isCloseTo(10_000 / 19_200.0, within(1e-12));
        assertThat(end.heldFast(100)).isCloseTo(1e8 / (3 * 9000 * 768_000.0), within(1e-12));
        assertThat(end.deflection(100)).isCloseTo(5e8 / (3 * 9000 * 768_000.0), within(1e-12));
        assertThat(end.lastShare()).isEqualTo(1.25);
        assertThat(end.liftShare()).isEqualTo(0.25);
    }

    @Test
    void balancesOnTheLastTwoStuds() {
        var random = new SplittableRandom(61);
        for (int i = 0; i < Cleats.SEEDS; i++) {
            var end = new StripOverhang(random.nextDouble(0, 150), random.nextDouble(200, 610), 80, 18, 9000);
            double behind = -end.backSpan();

            assertThat(end.lastShare() - end.liftShare() - 1).isCloseTo(0, within(1e-9));
            assertThat(-end.liftShare() * behind - end.overhang()).isCloseTo(0, within(1e-9));
            double[] shares =
                    new StripSpans(List.of(behind, 0.0), end.overhang() - 1e-3, end.overhang() + 1e-3).cutAtStuds();
            assertThat(shares[1]).isCloseTo(end.lastShare(), within(1e-3));
        }
    }

    @Test
    void sinksAsIfHeldFastWithAShortSpanBehind() {
        var stiff = new StripOverhang(100, 1e-3, 80, 18, 9000);

        assertThat(stiff.deflection(100) / stiff.heldFast(100)).isCloseTo(1, within(1e-4));
        assertThat(new StripOverhang(0, 400, 80, 18, 9000).deflection(100)).isZero();
        assertThat(new StripOverhang(0, 400, 80, 18, 9000).lastShare()).isEqualTo(1);
    }

    @Test
    void refusesAStripThatIsNone() {
        assertThatThrownBy(() -> new StripOverhang(-1, 400, 80, 18, 9000))
                .hasMessage("overhang of the strip is -1.0 mm, but must be 0 or more.");
        assertThatThrownBy(() -> new StripOverhang(100, 0, 80, 18, 9000))
                .hasMessage("span behind the overhang is 0.0 mm, but must be more than 0.");
        assertThatThrownBy(() -> new StripOverhang(100, 400, 80, 18, Double.POSITIVE_INFINITY))
                .hasMessageContaining("modulus of the strip is Infinity N/mm²");
    }
}
