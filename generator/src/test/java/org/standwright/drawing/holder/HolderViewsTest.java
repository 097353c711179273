package org.standwright.drawing.holder;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.unit.Units;

class HolderViewsTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    /** All ten kinds, between the margins of A4 and of Letter, where two share a page and where one has it alone. */
    @ParameterizedTest
    @CsvSource({"mm, 180, 64", "mm, 180, 100", "in, 185.9, 64", "in, 185.9, 100"})
    void everyKindFitsAndNoLettersLieOnOthers(String unit, double width, double height) {
        var walls = BenchHolders.wall(unit);
        var kinds = new HashSet<Class<?>>();
        for (var holder : EqualHolders.of(walls)) {
            kinds.add(holder.made().holder().getClass());
            var figure = HolderViews.of(
                    holder, walls.design().cleat(), walls.design().unit(), width, height, MEASURE);

            assertThat(figure.width()).as(holder.title()).isLessThanOrEqualTo(width);
            assertThat(figure.height()).as(holder.title()).isLessThanOrEqualTo(height);
            assertNoneOverlap(figure, holder.title());
        }
        assertThat(kinds).hasSize(10);
    }

    private static void assertNoneOverlap(Figure figure, String title) {
        var texts = Lettering.of(figure.shapes(), MEASURE).texts();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Lettering.overlap(texts.get(i).box(), texts.get(j).box()))
                        .as("%s: '%s' on '%s'", title, texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
    }

    /**
     * By hand: 5 things of 75 with 6 gaps of 20 are 495 wide; their depth of 75 and 10 behind them before a back 12 thick
     * on a cleat 17.7 thick, with a lip of 12, stand out 126.7; the lip is 20 higher than the board, whose upper face is
     * level with the strip's high edge; brackets of 12 end at 90 % of 85.
     */
    @Test
    void theDimensionsOfAShelfAreThoseThatItIsWorkedOutFrom() {
        var words = words(figure("glue shelf", Units.MM)).toList();

        assertThat(words).contains("495", "12", "483", "126.7", "17.7", "29.7");
        double edge = number(words, "strip's high edge");
        double top = number(words, "upper edges");
        assertThat(words)
                .contains(Units.MM.bareLength(edge), Units.MM.bareLength(edge - 12), Units.MM.bareLength(edge + 20))
                .contains(Units.MM.bareLength(29.7 + 0.9 * 85))
                .contains(Units.MM.bareLength(top), "0 back's lower edge", "hanger screws, lip screws");
    }

    private static double number(List<String> words, String name) {
        return words.stream()
                .filter(text -> text.endsWith(" " + name))
                .mapToDouble(text -> Double.parseDouble(text.substring(0, text.indexOf(' '))))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void inchesAreFractions() {
        for (var holder : BenchHolders.equal("in")) {
            assertThat(words(figure(holder.names().get(0), Units.INCH)))
                    .as(holder.title())
                    .noneMatch(text -> text.matches(".*\\d\\.\\d.*"))
                    .anyMatch(text -> text.matches("(\\d+ )?\\d+/\\d+.*"));
        }
    }

    @Test
    void equalHoldersAreDrawnOnceWithAllTheirNames() {
        var equal = BenchHolders.equal("mm");

        assertThat(equal).hasSize(11);
        assertThat(equal.stream().map(EqualHolders::title)).contains("file rack and chisel rack", "glue shelf");
    }

    private static Figure figure(String name, Units units) {
        var cleat = BenchHolders.wall("mm").design().cleat();
        return HolderViews.of(BenchHolders.named(name), cleat, units, 180, 100, MEASURE);
    }

    private static Stream<String> words(Figure figure) {
        return Lettering.of(figure.shapes(), MEASURE).texts().stream().map(Lettering.Placed::words);
    }
}
