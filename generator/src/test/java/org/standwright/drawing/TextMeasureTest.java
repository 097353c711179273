package org.standwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TextMeasureTest {
    private final TextMeasure measure = TextMeasure.shipped();

    @Test
    void theTypefaceHasTheSignsThatAShopNeeds() {
        var signs = "×°±≥≤Ø½¼¾²³–—″′−…";
        assertThat(measure.printable(signs)).isEqualTo(signs);
    }

    @Test
    void charactersThatItLacksAreShownAsQuestionMarks() {
        assertThat(measure.printable("a\u6728b\tc")).isEqualTo("a?b c");
    }

    @Test
    void wrapsAtBlanksAndBreaksOnlyWordsLongerThanALine() {
        assertThat(measure.wrap("one two three", measure.width("one two", 3, Weight.REGULAR), 3, Weight.REGULAR))
                .containsExactly("one two", "three");
        assertThat(measure.wrap("iiiiiiii", measure.width("iiii", 3, Weight.REGULAR), 3, Weight.REGULAR))
                .containsExactly("iiii", "iiii");
    }
}
