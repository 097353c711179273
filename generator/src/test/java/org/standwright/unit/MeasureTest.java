package org.standwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class MeasureTest {

    /** Factors: NIST Special Publication 811 (2008), appendix B, where they are marked as exact. */
    @ParameterizedTest
    @CsvSource({
        "LENGTH, 1 in, 25.4",
        "LENGTH, 1 ft, 304.8",
        "LENGTH, 1 m, 1000",
        "LENGTH, 1 cm, 10",
        "MASS, 1 lb, 0.45359237",
        "MASS, 16 oz, 0.45359237",
        "MASS, 1 g, 0.001",
        "FORCE, 1 lbf, 4.4482216152605",
        "FORCE, 1 kN, 1000"
    })
    void convertsWithTheExactFactorsOfNist(Measure measure, String text, double expected) {
        assertThat(measure.parse(text, "")).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "34 1/2 in  | 876.3",
                "34-1/2\"   | 876.3",
                "34 - 1/2 in| 876.3",
                "34½ in     | 876.3",
                "34–1/2″    | 876.3",
                "2' 10 1/2\"| 876.3",
                "2 ft 10.5in| 876.3",
                "876 mm     | 876",
                "87.6 cm    | 876",
                "0.876 m    | 876",
                ".75in      | 19.05",
                "3/4 in     | 19.05",
                "5. mm      | 5",
                "12         | 12",
                "-3 mm      | -3",
                "−1/8 in    | -3.175",
                "-0 mm      | 0",
                "96 in      | 2438.4",
                "14 in      | 355.6",
                "23/32 in   | 18.25625"
            })
    void readsALengthTheWayPeopleWriteIt(String text, double mm) {
        assertThat(Measure.LENGTH.parse(text, "mm")).isEqualTo(mm);
    }

    @ParameterizedTest
    @CsvSource({"12 lb 4 oz, 5.5565065325", "900 g, 0.9", "38 kg, 38", "84 lb, 38.10175908"})
    void readsAMass(String text, double kg) {
        assertThat(Measure.MASS.parse(text, "kg")).isEqualTo(kg);
    }

    @ParameterizedTest
    @CsvSource({"34 1/2, in, 876.3", "7, mm, 7", "3/4, in, 19.05"})
    void givesANumberWithoutAUnitTheDefaultUnit(String text, String unit, double mm) {
        assertThat(Measure.LENGTH.parse(text, unit)).isEqualTo(mm);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "-",
                "mm",
                "--5 mm",
                "+5 mm",
                "5 -3 mm",
                "1 2 mm",
                "2' 10",
                "10 in 2 ft",
                "2 ft 3 ft",
                "1e3 mm",
                "5 kg",
                "34,5 mm",
                "1/0 in",
                "3 4/2 in",
                "1/2 1/2 in",
                "0x10 mm",
                "five mm",
                "5 mm wide",
                "NaN",
                "Infinity",
                "1/2/3 in",
                "5 MM",
                "∞ mm",
                "5\n\nmm x"
            })
    void refusesWhatIsNoLength(String text) {
        assertThatThrownBy(() -> Measure.LENGTH.parse(text, "mm"))
                .isInstanceOf(QuantityException.class)
                .hasMessageContaining("Write it like 876 mm");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "34,5 mm | '34,5 mm' must be a length. Write it like 38. Use a point for decimals.",
                "5 stone | '5 stone' must have a unit of mass, not 'stone'. Write it like 38.",
                "1/0 kg  | '1/0 kg' must not divide by 0. Write it like 38.",
                "2 5/4 kg| '2 5/4 kg' must end in a fraction below 1. Write it like 38."
            },
            ignoreLeadingAndTrailingWhitespace = true,
            quoteCharacter = '`')
    void saysWhatWouldBeRight(String text, String message) {
        var measure = text.endsWith("mm") ? Measure.LENGTH : Measure.MASS;

        assertThatThrownBy(() -> measure.parse(text, "")).hasMessage(message.replace("38", measure.examples()));
    }

    @ParameterizedTest
    @ValueSource(ints = {61, 5_000, 200_000})
    void refusesAVeryLongTextAtOnceAndShortensItInTheMessage(int length) {
        assertThatThrownBy(() -> Measure.LENGTH.parse("1 ".repeat(length), "mm"))
                .isInstanceOf(QuantityException.class)
                .extracting(Throwable::getMessage, InstanceOfAssertFactories.STRING)
                .hasSizeLessThan(200);
    }

    @ParameterizedTest
    @CsvSource({"34.5, in, 876.3", "0.71875, in, 18.25625", "96, in, 2438.4", "-2.5, cm, -25"})
    void takesAPlainNumberInAUnit(double number, String unit, double mm) {
        assertThat(Measure.LENGTH.of(number, unit)).isEqualTo(mm);
    }

    /** 23/32 in plywood, 4 x 8 ft at 36 lb/ft³: 69.0 lb = 31.298 kg (own calculation with the factors above). */
    @ParameterizedTest
    @ValueSource(doubles = 36.0)
    void weighsASheetInEitherSystemAlike(double poundsPerCubicFoot) {
        double cubicFeet = 4 * 8 * (23.0 / 32 / 12);
        double kg = Measure.MASS.of(poundsPerCubicFoot * cubicFeet, "lb");

        assertThat(kg).isCloseTo(31.298, within(0.001));
    }
}
