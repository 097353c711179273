package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.cutlist.CutList;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.SheetFigure;
import org.standwright.packet.words.SecondStage;
import org.standwright.sheet.PlannedSheet;

/** Sheets of every complete stand, as large as a page and small enough for a row of two. */
class SheetFiguresTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    static Stream<StandDesign> stands() {
        return Presets.stands();
    }

    @ParameterizedTest
    @MethodSource("stands")
    void everyLabelAndEveryCutsNumberIsWrittenAndNoTextLiesOnAnother(StandDesign design) {
        var stand = StandBuilder.build(design);
        var list = CutList.of(stand.assembly(), design.unit());
        var plan = Jobs.plan(design, list);
        var style = new SheetFigure(plan.saw(), SecondStage.of(stand).labels(list), design.unit(), MEASURE);
        for (var material : plan.materials()) {
            for (var sheet : material.sheets()) {
                assertComplete(style.of(sheet, 267, 190), sheet);
                assertComplete(style.of(sheet, 110, 90), sheet);
            }
        }
    }

    private static void assertComplete(Figure figure, PlannedSheet sheet) {
        var texts = Lettering.of(figure.shapes(), MEASURE).texts();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Lettering.overlap(texts.get(i).box(), texts.get(j).box()))
                        .as("'%s' on '%s'", texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
        var words = texts.stream().map(Lettering.Placed::words).toList();
        sheet.cuts().forEach(cut -> assertThat(words).contains(String.valueOf(cut.number())));
        assertThat(words.stream().filter(word -> startsWithLabel(word, sheet)).count())
                .isGreaterThanOrEqualTo(sheet.pieces().size());
    }

    private static boolean startsWithLabel(String word, PlannedSheet sheet) {
        var label = List.of(word.split("  ")).get(0);
        return sheet.pieces().stream().anyMatch(piece -> piece.label().equals(label));
    }
}
