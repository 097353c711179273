package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class SawWordsTest {
    @Test
    void threeOrMoreNumbersInARowAreDrawnTogether() {
        assertThat(SawWords.runs(List.of(3))).isEqualTo("3");
        assertThat(SawWords.runs(List.of(3, 4))).isEqualTo("3, 4");
        assertThat(SawWords.runs(List.of(1, 3, 4, 5, 8, 9))).isEqualTo("1, 3–5, 8, 9");
    }
}
