package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.unit.Units;

class SheetFigureTest {
    private static final int MM = 3200;
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    private static final SheetFigure STYLE = new SheetFigure(new Saw(4, 5), Set.of("C"), Units.MM, MEASURE);

    private final List<PlacedPiece> pieces = new ArrayList<>();
    private final List<Cut> cuts = new ArrayList<>();
    private final List<Area> offcuts = new ArrayList<>();

    @Test
    void lettersPiecesOffcutsCutsAndTheBoard() {
        pieces.add(new PlacedPiece("A", area(5, 5, 800, 400), false));
        pieces.add(new PlacedPiece("B-L", area(5, 409, 300, 700), true));
        cuts.add(rip(1, Cut.Tool.SAW, area(5, 405, 2430, 4)));
        offcuts.add(area(809, 5, 1626, 400));

        assertThat(words(STYLE.of(planned(), 277, 178)))
                .containsExactlyInAnyOrder(
                        "A",
                        "800 × 400",
                        "B-L",
                        "700 × 300",
                        "turned",
                        "offcut",
                        "1626",
                        "400",
                        "1",
                        "2440",
                        "1220",
                        "Scale 1:10, millimetres");
    }

    @Test
    void aLabelIsLargerThanTheSizeBelowIt() {
        pieces.add(new PlacedPiece("A", area(5, 5, 800, 400), false));

        var texts =
                Lettering.of(STYLE.of(planned(), 277, 178).shapes(), MEASURE).texts();

        var label = named("A", texts).box();
        var size = named("800 × 400", texts).box();
        assertThat(label.height()).isGreaterThan(1.5 * size.height());
        assertThat(label.y0()).isGreaterThan(size.y1());
    }

    @Test
    void saysWhichPiecesWait() {
        pieces.add(new PlacedPiece("C", area(5, 5, 800, 400), false));

        assertThat(words(STYLE.of(planned(), 277, 178))).contains("C", "800 × 400", "stage 2");
    }

    @Test
    void aSmallOffcutHasBothSidesInOneLine() {
        offcuts.add(area(5, 5, 300, 100));

        assertThat(words(STYLE.of(planned(), 277, 178))).contains("300 × 100");
    }

    /** 20 × 20 mm are 2 × 2 mm at 1:10: no letter fits into that. */
    @Test
    void aTinyPieceIsLabelledBesideTheBoardWithALineToIt() {
        pieces.add(new PlacedPiece("A", area(2000, 600, 20, 20), false));

        var figure = STYLE.of(planned(), 300, 190);

        var label = named("A", Lettering.of(figure.shapes(), MEASURE).texts()).box();
        assertThat(label.x0()).isGreaterThan(244);
        assertThat(lines(figure, Pen.DIMENSION)).anySatisfy(line -> {
            assertThat(line.from().x()).isBetween(200.0, 202.0);
            assertThat(line.from().y()).isBetween(60.0, 62.0);
            assertThat(line.to().x()).isBetween(label.x0() - 1, label.x0());
        });
        assertThat(STYLE.readable(planned(), 300, 190, Letters.SMALLEST)).isEmpty();
    }

    @Test
    void tinyPiecesSideBySideHaveLabelsThatDoNotTouch() {
        for (int i = 0; i < 12; i++) {
            pieces.add(new PlacedPiece("AB-L", area(1000 + 24 * (i % 4), 600 + 24 * (i / 4), 20, 20), false));
        }

        assertNoneOverlap(STYLE.of(planned(), 300, 220));
    }

    /** A strip of 2 mm on paper takes a number of 1.7 mm at its end; a fifth number on one short line finds none. */
    @Test
    void numbersThatFindNoPlaceOnTheirCutsStandBesideTheBoard() {
        for (int i = 1; i <= 5; i++) {
            cuts.add(new Cut(
                    i,
                    Cut.Direction.CROSSCUT,
                    area(1000 + 6 * i, 600, 4, 30),
                    Cut.Tool.SAW,
                    Cut.Purpose.DIVIDE,
                    Edge.X0,
                    0));
        }
        var figure = STYLE.of(planned(), 300, 220);

        assertThat(words(figure)).contains("1", "2", "3", "4", "5");
        assertNoneOverlap(figure);
    }

    @Test
    void handHeldCutsSawCutsAndTrimHaveLinesOfTheirOwn() {
        cuts.add(rip(1, Cut.Tool.BREAK_DOWN_SAW, area(5, 405, 2430, 4)));
        cuts.add(rip(2, Cut.Tool.SAW, area(5, 605, 2430, 4)));

        var figure = STYLE.of(planned(), 277, 178);

        assertThat(lines(figure, Pen.HAND_CUT)).hasSize(1);
        assertThat(lines(figure, Pen.CUT)).hasSize(1);
        assertThat(Pen.HAND_CUT.dashes()).isNotEmpty();
        assertThat(Pen.HAND_CUT.width()).isGreaterThan(2 * Pen.CUT.width());
        assertThat(words(SheetKey.of(List.of(planned()), MEASURE)))
                .containsExactly("saw cut", "hand-held saw", "trim", "offcut to keep");
    }

    @Test
    void theKeySaysNothingOfASawThatIsNotUsed() {
        assertThat(words(SheetKey.of(List.of(planned()), MEASURE))).doesNotContain("hand-held saw");
    }

    private PlannedSheet planned() {
        return new PlannedSheet(StockSheet.bought(Designs.BOARD_18), pieces, cuts, offcuts);
    }

    private static Area area(int x, int y, int length, int width) {
        return new Area(x * MM, y * MM, length * MM, width * MM);
    }

    private static Cut rip(int number, Cut.Tool tool, Area kerf) {
        return new Cut(number, Cut.Direction.RIP, kerf, tool, Cut.Purpose.DIVIDE, Edge.Y0, 0);
    }

    private static Lettering.Placed named(String words, List<Lettering.Placed> texts) {
        return texts.stream()
                .filter(text -> text.words().equals(words))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> words(Figure figure) {
        return Lettering.of(figure.shapes(), MEASURE).texts().stream()
                .map(Lettering.Placed::words)
                .toList();
    }

    private static List<Line> lines(Figure figure, Pen pen) {
        return figure.shapes().stream()
                .filter(Line.class::isInstance)
                .map(Line.class::cast)
                .filter(line -> line.pen() == pen)
                .toList();
    }

    static void assertNoneOverlap(Figure figure) {
        List<Shape> shapes = figure.shapes();
        var texts = Lettering.of(shapes, MEASURE).texts();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Lettering.overlap(texts.get(i).box(), texts.get(j).box()))
                        .as("'%s' on '%s'", texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
    }
}
