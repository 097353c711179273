package org.standwright.viewer.form;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.file.FileKind;

class StepperTest {
    private final Bench metric = Bench.of(FileKind.STAND, "planer-stand");
    private final Bench inches = Bench.of(FileKind.STAND, "table-saw-stand");

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "900 mm, 1, 901 mm",
                "12.7 mm, -1, 11.7 mm",
                "900, 10, 910",
                "90 cm, 1, 90.1 cm",
                "1.2 m, 1, 1.201 m",
                "24 1/2 in, 1, 24 9/16 in",
                "24 1/2\", -8, 24\"",
                "1/32 in, 1, 3/32 in",
                "-1/16 in, 2, 1/16 in"
            })
    void stepsALengthInTheUnitThatItIsTypedIn(String text, int steps, String expected) {
        assertThat(Stepper.step(metric.row("/saw/kerf"), text, steps)).contains(expected);
    }

    @ParameterizedTest
    @CsvSource({"24.5, 1, 24.5625", "24 in, 1, 24 1/16 in"})
    void stepsPlainNumbersOfAnInchFileBySixteenths(String text, int steps, String expected) {
        assertThat(Stepper.step(inches.row("/saw/kerf"), text, steps)).contains(expected);
    }

    @ParameterizedTest
    @CsvSource({"1, -1", "20, 1", "many, 1"})
    void staysWithinWhatACountMayBe(String text, int steps) {
        assertThat(Stepper.step(inches.row("/bays/1/contents/0/count"), text, steps))
                .isEmpty();
    }
}
