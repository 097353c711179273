package org.standwright.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ColourTest {
    /** As in CSS Color Module Level 3, section 4.2.1: tan is #d2b48c, that is 210, 180, 140 (from memory). */
    @Test
    void readsTwoHexadecimalDigitsEachForRedGreenAndBlue() {
        assertThat(Colour.parse("#d2b48c")).isEqualTo(new Colour(210, 180, 140));
        assertThat(Colour.parse("#D2B48C")).isEqualTo(new Colour(210, 180, 140));
        assertThat(Colour.parse("#000000")).isEqualTo(new Colour(0, 0, 0));
        assertThat(Colour.parse("#00FFff")).isEqualTo(new Colour(0, 255, 255));
    }

    @Test
    void isWrittenAsItIsRead() {
        assertThat(new Colour(210, 180, 140)).hasToString("#d2b48c");
        assertThat(new Colour(0, 9, 255)).hasToString("#0009ff");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "d2b48c", "#d2b48", "#d2b48cff", "#d2b48g", "# 2b48c", "tan"})
    void refusesAnyOtherText(String text) {
        assertThatThrownBy(() -> Colour.parse(text))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("colour '" + text + "' must be # and six hexadecimal digits, two each for red, green and"
                        + " blue. Write it like #d9b982.");
    }

    @Test
    void refusesPartsOutOfRange() {
        assertThatThrownBy(() -> new Colour(0, 256, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("green of a colour is 256, but must be 0 to 255.");
        assertThatThrownBy(() -> new Colour(-1, 0, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("red of a colour is -1, but must be 0 to 255.");
    }

    @Test
    void belongsToAMaterialAndIsPlainWhereNoneIsGiven() {
        var board = new Material("board", 18, 680, Grain.NONE);
        var dark = board.coloured(Colour.parse("#5b3a21"));

        assertThat(board.colour()).isEqualTo(Material.PLAIN).hasToString("#d9b982");
        assertThat(dark.colour()).hasToString("#5b3a21");
        assertThat(dark.coloured(Material.PLAIN)).isEqualTo(board);
        assertThat(Material.bar("strip", 40, 20, 700).colour()).isEqualTo(Material.PLAIN);
    }
}
