package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlateTest {
    /** Roark's Formulas for Stress and Strain, table 11.4, case 1a: uniform load over the entire plate. */
    @ParameterizedTest
    @CsvSource({
        "1, .0444, .2874, .420",
        "1.2, .0616, .3762, .455",
        "1.4, .0770, .4530, .478",
        "1.6, .0906, .5172, .491",
        "1.8, .1017, .5688, .499",
        "2, .1110, .6102, .503",
        "3, .1335, .7134, .505",
        "4, .1400, .7410, .502",
        "5, .1417, .7476, .501",
        "100, .1421, .7500, .500"
    })
    void reproducesRoarksTable(double ratio, double alpha, double beta, double gamma) {
        var plate = new Plate(ratio, 1, 1, 1);

        assertThat(plate.uniform(1)).isCloseTo(alpha, withPercentage(0.6));
        assertThat(plate.stress(1)).isCloseTo(beta, withPercentage(0.6));
        assertThat(plate.reaction(1)).isCloseTo(gamma, withPercentage(0.6));
    }

    /** The same table: uniform load over a small circle in the middle. */
    @ParameterizedTest
    @CsvSource({"1, .1267", "1.2, .1478", "1.4, .1621", "1.6, .1715", "1.8, .1770", "2, .1805", "100, .1851"})
    void reproducesRoarksTableForAPointInTheMiddle(double ratio, double alpha) {
        assertThat(new Plate(ratio, 1, 1, 1).centre(1)).isCloseTo(alpha, withPercentage(0.3));
    }

    /** Coefficients of the same table, times q b⁴ / (E t³). */
    @Test
    void sagsTwoPlatesUnderOneKilopascal() {
        assertThat(new Plate(400, 400, 6, 9000).uniform(1e-3)).isCloseTo(0.5847, withPercentage(0.2));
        assertThat(new Plate(600, 300, 6, 9000).uniform(1e-3)).isCloseTo(0.4625, withPercentage(0.5));
    }

    /** Navier's double series, summed here: 16 / π⁶ Σ Σ ± 1 / (m n (m² / a² + n²)²). */
    @ParameterizedTest
    @CsvSource({"1, 0.0040624", "1.5, 0.0077240", "2, 0.0101287"})
    void sumsToNaviersSeries(double ratio, double known) {
        double sum = 0;
        for (int m = 1; m < 400; m += 2) {
            for (int n = 1; n < 400; n += 2) {
                double sign = (m + n) % 4 == 2 ? 1 : -1;
                double inner = m * m / (ratio * ratio) + n * n;
                sum += sign / (m * n * inner * inner);
            }
        }
        double navier = 16 / StrictMath.pow(StrictMath.PI, 6) * sum;

        assertThat(navier).isCloseTo(known, within(1e-6));
        assertThat(new Plate(ratio, 1, 1, 1).uniform(1) / 10.92).isCloseTo(navier, within(1e-8));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6})
    void agreesWithFiniteDifferences(int seed) {
        var random = new SplittableRandom(seed);
        double shorter = random.nextDouble(100, 600);
        double longer = shorter * random.nextDouble(1, 3);
        double thickness = random.nextDouble(3, 20);
        double modulus = random.nextDouble(1500, 12_000);
        double load = random.nextDouble(1e-4, 1e-2);
        var plate = new Plate(longer, shorter, thickness, modulus);
        double rigidity = modulus * thickness * thickness * thickness / (12 * 0.91);
        var even = new FinitePlate(shorter, longer, rigidity).uniform(load);
        var middle = new FinitePlate(shorter, longer, rigidity).centre(100);

        assertThat(plate.uniform(load)).isCloseTo(even.middle(), withPercentage(0.5));
        assertThat(plate.stress(load)).isCloseTo(6 * even.momentX(0.3) / (thickness * thickness), withPercentage(1));
        assertThat(plate.reaction(load)).isCloseTo(even.reactionX(0.3), withPercentage(2));
        assertThat(plate.centre(100)).isCloseTo(middle.middle(), withPercentage(2));
    }

    @Test
    void takesTheWeakerGrainUpToTwiceAsLongAsWideAndTheShortSpansBeyond() {
        assertThat(new PlatePanel(400, 700, 6, 6500, 3000).modulus()).isEqualTo(3000);
        assertThat(new PlatePanel(400, 900, 6, 6500, 3000).modulus()).isEqualTo(6500);
        assertThat(new PlatePanel(900, 400, 6, 6500, 3000).modulus()).isEqualTo(3000);
    }

    /** A strip of 1 mm: 5 q L⁴ / (384 E t³ / 12), q L² / 8 over t² / 6. */
    @Test
    void countsALongPanelAsAStripAcross() {
        var panel = new PlatePanel(300, 900, 6, 6000, 3000);

        assertThat(panel.uniform(1e-3)).isCloseTo(5 * 1e-3 * 8.1e9 * 12 / (384 * 6000 * 216), withPercentage(1e-9));
        assertThat(panel.stress(1e-3)).isCloseTo(1e-3 * 90_000 * 6 / 8 / 36, withPercentage(1e-9));
        assertThat(panel.believes(3)).isTrue();
        assertThat(panel.believes(3.1)).isFalse();
    }

    @Test
    void neverSagsMoreWhenItIsThickerOrStiffer() {
        var random = new SplittableRandom(5);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble(100, 1200);
            double y = random.nextDouble(100, 1200);
            double t = random.nextDouble(3, 25);
            double along = random.nextDouble(2000, 12_000);
            double across = random.nextDouble(1000, 9000);
            double sag = new PlatePanel(x, y, t, along, across).uniform(1e-3);

            assertThat(new PlatePanel(x, y, t * 1.05, along, across).uniform(1e-3))
                    .isLessThan(sag);
            assertThat(new PlatePanel(x, y, t, along, across * 1.1).uniform(1e-3))
                    .isLessThanOrEqualTo(sag);
        }
    }

    @Test
    void refusesAPlateWithItsSidesChangedOver() {
        assertThatThrownBy(() -> new Plate(300, 400, 6, 9000))
                .hasMessage("a plate's shorter side is 400.0 mm, but its longer one 300.0 mm. Change them over.");
    }
}
