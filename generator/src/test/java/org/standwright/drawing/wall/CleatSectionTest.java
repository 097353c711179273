package org.standwright.drawing.wall;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;

class CleatSectionTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    /** By hand: 23/32 in at 45° rises 23/32; short face 3 1/2 − 23/32 = 2 25/32; strip 3 1/2 − 1/16. */
    @Test
    void hasTheSizesOfTheSectionInTheMakersUnits() {
        var figure = CleatSection.of(BuiltWalls.of("panel-wall"), 130, 130, MEASURE);

        assertThat(Ink.of(figure.shapes(), Text.class).map(Text::words))
                .contains("short face 2 25/32", "rise 23/32", "strip 3 7/16", "bevel 45° from square", "screw 3 in");
    }

    @Test
    void fitsAndNoWordsLieOnOthers() {
        for (var name : BuiltWalls.NAMES) {
            var figure = CleatSection.of(BuiltWalls.of(name), 130, 115, MEASURE);
            assertThat(figure.width()).isLessThanOrEqualTo(130);
            assertThat(figure.height()).isLessThanOrEqualTo(115);
            var texts = Lettering.of(figure.shapes(), MEASURE).texts();
            for (int i = 0; i < texts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(Lettering.overlap(
                                    texts.get(i).box(), texts.get(j).box()))
                            .as("%s on %s, %s", texts.get(i), texts.get(j), name)
                            .isFalse();
                }
            }
        }
    }
}
