package org.standwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {
    private static final int CASES = "full".equals(System.getProperty("standwright.random")) ? 100_000 : 1_000;

    @ParameterizedTest
    @CsvSource({
        "MM, 876, 876 mm",
        "MM, 876.25, 876.3 mm",
        "MM, 17.7, 17.7 mm",
        "MM, 0, 0 mm",
        "MM, -0.04, 0 mm",
        "INCH, 876.3, 34 1/2 in",
        "INCH, 19.05, 3/4 in",
        "INCH, 25.4, 1 in",
        "INCH, 18.25625, 23/32 in",
        "INCH, -3.175, -1/8 in",
        "INCH, 0.1, 0 in",
        "INCH, 25.3, 1 in",
        "INCH_64, 13.096875, 33/64 in",
        "INCH, 13.096875, 17/32 in"
    })
    void writesALengthAsATapeShowsIt(Units units, double mm, String text) {
        assertThat(units.length(mm)).isEqualTo(text);
    }

    /** A dado of 17.7 + 0.15 mm is as wide here as there, whatever sum gave its sides. */
    @Test
    void roundsHalvesOneWayInSpiteOfTheNoiseOfSums() {
        assertThat(Units.MM.bareLength(17.849999999999994)).isEqualTo("17.9");
        assertThat(Units.MM.bareLength(17.850000000000023)).isEqualTo("17.9");
        assertThat(Units.MM.shown(17.849999999999994)).isEqualTo(17.9);
        assertThat(Units.INCH.bareLength(25.4 * 23 / 64 - 1e-12)).isEqualTo("3/8");
        assertThat(Units.INCH.shown(25.4 * 23 / 64 - 1e-12)).isCloseTo(25.4 * 3 / 8, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"MM, 38.24, 38.2 kg", "INCH, 38.10175908, 84 lb", "INCH_64, 0.45359237, 1 lb"})
    void writesAMass(Units units, double kg, String text) {
        assertThat(units.mass(kg)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"MM, 150, 150 N", "INCH, 150, 33.7 lbf"})
    void writesAForce(Units units, double newton, String text) {
        assertThat(units.force(newton)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"MM, 2976800, 2.98 m²", "INCH, 2972897.28, 32 ft²"})
    void writesAnArea(Units units, double mm2, String text) {
        assertThat(units.area(mm2)).isEqualTo(text);
    }

    @ParameterizedTest
    @EnumSource
    void readsBackWhatItWroteToWithinHalfAStep(Units units) {
        var random = new SplittableRandom(7);
        double halfStep = switch (units) {
            case MM -> 0.05;
            case INCH -> 25.4 / 64;
            case INCH_64 -> 25.4 / 128;
        };
        double halfTenth = Measure.MASS.of(0.05, units.unitOf(Measure.MASS));
        for (int i = 0; i < CASES; i++) {
            double value = random.nextDouble(-500, 4000);
            assertThat(Measure.LENGTH.parse(units.length(value), "")).isCloseTo(value, within(halfStep + 1e-9));
            assertThat(Measure.LENGTH.parse(units.bareLength(value), units.unitOf(Measure.LENGTH)))
                    .isCloseTo(value, within(halfStep + 1e-9));
            assertThat(Measure.MASS.parse(units.mass(Math.abs(value)), ""))
                    .isCloseTo(Math.abs(value), within(halfTenth + 1e-9));
        }
    }

    @Test
    void keepsEverySixtyFourthOfAnInch() {
        for (int sixtyFourths = 0; sixtyFourths <= 100 * 64; sixtyFourths++) {
            double mm = Measure.LENGTH.of(sixtyFourths / 64.0, "in");

            assertThat(Measure.LENGTH.parse(Units.INCH_64.length(mm), "")).isEqualTo(mm);
        }
    }

    @ParameterizedTest
    @EnumSource
    void isFoundByTheWordThatFilesUse(Units units) {
        assertThat(Units.named(units.word())).contains(units);
    }
}
