package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DigitsTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0.0, 0",
        "1, 1",
        "-18, -18",
        "0.5, 0.5",
        "-0.25, -0.25",
        "1000.0009765625, 1000.0009765625",
        "-16384, -16384",
        "0.0009765625, 0.0009765625"
    })
    void areAsShortAsTheyCanBe(double mm, String text) {
        assertThat(Digits.grid(mm)).isEqualTo(text);
    }

    @Test
    void areThoseOfTheExactDecimalNumber() {
        var random = new SplittableRandom(1);
        for (int i = 0; i < 10_000; i++) {
            double mm = random.nextInt(-20_000_000, 20_000_000) / 1024.0;

            assertThat(Digits.grid(mm)).isEqualTo(new BigDecimal(mm).toPlainString());
        }
    }

    @ParameterizedTest
    @CsvSource({"0.8509, 0.851", "1, 1", "-0.0004, 0", "12.0405, 12.041"})
    void roundToThousandths(double value, String text) {
        assertThat(Digits.thousandths(value)).isEqualTo(text);
    }

    @Test
    void roundToMillionths() {
        assertThat(Digits.millionths(-0.70710678, new StringBuilder("n "))).hasToString("n -0.707107");
    }
}
