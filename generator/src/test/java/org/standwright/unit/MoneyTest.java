package org.standwright.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MoneyTest {

    @ParameterizedTest
    @ValueSource(strings = {"84.00 EUR", "0 USD", "1299 CHF", "999999999.999 KWD"})
    void readsBackWhatItWrites(String text) {
        assertThat(Money.parse(text)).hasToString(text);
    }

    @Test
    void readsAnAmountThatTouchesItsCurrency() {
        assertThat(Money.parse(" 84.5EUR ")).hasToString("84.5 EUR");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "84",
                "EUR",
                "EUR 84",
                "84,00 EUR",
                "-84 EUR",
                "84 eur",
                "84 EURO",
                "1e9 EUR",
                "1234567890 EUR",
                "8.1234 EUR"
            })
    void refusesWhatIsNoAmount(String text) {
        assertThatThrownBy(() -> Money.parse(text))
                .isInstanceOf(QuantityException.class)
                .hasMessage("'" + text + "' must be an amount and its currency in three capital letters."
                        + " Write it like 84.00 EUR.");
    }

    @Test
    void multipliesExactly() {
        assertThat(Money.parse("0.10 EUR").times(3)).hasToString("0.30 EUR");
    }
}
