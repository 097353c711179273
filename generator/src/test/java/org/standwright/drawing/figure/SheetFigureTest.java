package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.unit.Units;

class SheetFigureTest {
    private static final int MM = 3200;

    /** Two pieces, one turned, a rip between them and an offcut. */
    private static PlannedSheet planned() {
        var pieces = List.of(
                new PlacedPiece("A", new Area(5 * MM, 5 * MM, 800 * MM, 400 * MM), false),
                new PlacedPiece("B-L", new Area(5 * MM, 409 * MM, 300 * MM, 700 * MM), true));
        var cuts = List.of(new Cut(
                1,
                Cut.Direction.RIP,
                new Area(5 * MM, 405 * MM, 2430 * MM, 4 * MM),
                Cut.Tool.SAW,
                Cut.Purpose.DIVIDE,
                Edge.Y0,
                0));
        var offcuts = List.of(new Area(809 * MM, 5 * MM, 1626 * MM, 400 * MM));
        return new PlannedSheet(StockSheet.bought(Designs.BOARD_18), pieces, cuts, offcuts);
    }

    @Test
    void lettersPiecesOffcutsCutsAndTheBoard() {
        var measure = TextMeasure.shipped();
        var figure = SheetFigure.of(new Saw(4, 5), planned(), Units.MM, 277, 178, measure);
        var words = Lettering.of(figure.shapes(), measure).texts().stream()
                .map(Lettering.Placed::words)
                .toList();

        assertThat(words)
                .containsExactlyInAnyOrder(
                        "A",
                        "800 × 400",
                        "B-L",
                        "700 × 300",
                        "offcut",
                        "1626 × 400",
                        "1",
                        "2440",
                        "1220",
                        "Scale 1:10, millimetres");
    }
}
