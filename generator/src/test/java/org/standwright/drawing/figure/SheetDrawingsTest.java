package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.Saw;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.TextMeasure;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.MaterialPlan;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

class SheetDrawingsTest {
    private static final int MM = 3200;

    /** Two pieces, one turned, a rip between them and an offcut. */
    private static SheetPlan plan() {
        var pieces = List.of(
                new PlacedPiece("A", new Area(5 * MM, 5 * MM, 800 * MM, 400 * MM), false),
                new PlacedPiece("B-L", new Area(5 * MM, 409 * MM, 300 * MM, 700 * MM), true));
        var cuts = List.of(new Cut(1, Cut.Direction.RIP, new Area(5 * MM, 405 * MM, 2430 * MM, 4 * MM)));
        var offcuts = List.of(new Area(809 * MM, 5 * MM, 1626 * MM, 400 * MM));
        var sheet = new PlannedSheet(pieces, cuts, offcuts);
        return new SheetPlan(new Saw(4, 5), List.of(new MaterialPlan(Designs.BOARD_18, List.of(sheet, sheet), 2)));
    }

    @Test
    void everyBoardHasItsOwnDrawingLaidSideways() {
        var drawings = SheetDrawings.of(plan(), Units.MM, TextMeasure.shipped());

        assertThat(drawings)
                .extracting(Drawing::title)
                .containsExactly("board 18, sheet 1 of 2", "board 18, sheet 2 of 2");
        assertThat(drawings.get(0).width()).isEqualTo(297);
    }

    @Test
    void lettersPiecesOffcutsCutsAndTheBoard() {
        var drawing = SheetDrawings.of(plan(), Units.MM, TextMeasure.shipped()).get(0);
        var words = Lettering.of(drawing.shapes(), TextMeasure.shipped()).texts().stream()
                .map(Lettering.Placed::words)
                .toList();

        assertThat(words)
                .containsExactlyInAnyOrder(
                        "board 18, sheet 1 of 2",
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
