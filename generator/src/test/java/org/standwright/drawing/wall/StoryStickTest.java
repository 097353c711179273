package org.standwright.drawing.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.unit.Units;

class StoryStickTest {
    /** Rows from 38 in every 9 in, level line at 40 in; strips 3 1/2 − 1/16 in high. */
    @Test
    void countsEveryMarkFromTheLevelLine() {
        var stick = StoryStick.of(BuiltWalls.of("panel-wall"));

        var first = stick.marks().get(0);
        assertThat(first.edge()).isCloseTo(-2 * 25.4, within(1e-6));
        assertThat(first.lower()).isCloseTo(-(2 + 3.5 - 0.0625) * 25.4, within(1e-6));
        assertThat(first.step()).isEmpty();
        assertThat(stick.marks().get(1).step().orElseThrow()).isCloseTo(9 * 25.4, within(1e-6));
    }

    @Test
    void writesHeightsWithTheirSignAndInchesAsFractions() {
        assertThat(SignedHeight.of(240, Units.MM)).isEqualTo("+240");
        assertThat(SignedHeight.of(-60.5, Units.MM)).isEqualTo("−60.5");
        assertThat(SignedHeight.of(0.01, Units.MM)).isEqualTo("±0");
        assertThat(SignedHeight.of(-(5.4375) * 25.4, Units.INCH)).isEqualTo("−5 7/16");
        assertThat(SignedHeight.of(9.5 * 25.4, Units.INCH)).isEqualTo("+9 1/2");
    }

    @Test
    void aRowThatIsOnTwoWallsHasOneMark() {
        var walls = BuiltWalls.of("corner-walls");

        assertThat(StoryStick.of(walls).marks())
                .extracting(StoryStick.Mark::row)
                .doesNotHaveDuplicates()
                .isSorted();
    }

    @Test
    void itsFigureHasEveryRowAndFits() {
        var stick = StoryStick.of(BuiltWalls.of("bench-wall"));
        var figure = stick.figure(90, 150, TextMeasure.shipped());

        assertThat(figure.height()).isLessThanOrEqualTo(150);
        assertThat(Ink.of(figure.shapes(), Text.class).map(Text::words))
                .contains("row 1  +150", "row 5  +1150", "level line: 0 of the stick", "250");
    }
}
