package org.standwright.drawing.wall;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Line;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;

class WallPlanTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    /**
     * By hand: the second wall runs towards the person from (2800, 0), its door is hinged on the right at 2350 + 860 mm
     * and opens 90° into the room, which lies to the left.
     */
    @Test
    void aDoorOfTheSecondWallOpensIntoTheRoom() {
        var figure = WallPlan.of(BuiltWalls.of("corner-walls"), 180, 200, MEASURE);
        double scale = Ink.of(figure.shapes(), Text.class)
                .map(Text::words)
                .filter(words -> words.contains("scale 1:"))
                .mapToDouble(words -> Double.parseDouble(words.replaceAll(".*scale 1:(\\d+).*", "$1")))
                .findFirst()
                .orElseThrow();

        assertThat(figure.width()).isLessThanOrEqualTo(180);
        assertThat(figure.height()).isLessThanOrEqualTo(200);
        assertThat(Ink.of(figure.shapes(), Line.class)).anySatisfy(leaf -> {
            assertThat(leaf.from().x() * scale).isCloseTo(2800, close());
            assertThat(leaf.from().y() * scale).isCloseTo(-3210, close());
            assertThat(leaf.to().x() * scale).isCloseTo(2800 - 860, close());
            assertThat(leaf.to().y() * scale).isCloseTo(-3210, close());
        });
    }

    private static Offset<Double> close() {
        return Offset.offset(1e-6);
    }

    @Test
    void namesWallsAndWhatStandsBeforeThem() {
        var figure = WallPlan.of(BuiltWalls.of("corner-walls"), 180, 200, MEASURE);

        assertThat(Ink.of(figure.shapes(), Text.class).map(Text::words))
                .contains("west  2800", "north  3400", "tall cabinet");
    }
}
