package org.standwright.packet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;

class SheetCutsTest {
    private static final int MM = 3200;

    private static Area area(int x, int y, int length, int width) {
        return new Area(x * MM, y * MM, length * MM, width * MM);
    }

    /**
     * A board of 1010 × 510 mm, 5 mm trimmed, kerf 4 mm: a strip of 200 mm with A, then B beside an offcut above it.
     * Fence and corner differ by the trim at the edges, and by what lies below a panel elsewhere.
     */
    @Test
    void saysWhatEachCutFreesAndWhereTheFenceStands() {
        var pieces = List.of(
                new PlacedPiece("A", area(5, 5, 1000, 200), false),
                new PlacedPiece("B", area(5, 209, 300, 296), false));
        var cuts = List.of(
                new Cut(1, Cut.Direction.RIP, area(5, 205, 1000, 4), Cut.Tool.SAW, Cut.Purpose.DIVIDE, Edge.Y0, 0),
                new Cut(
                        2,
                        Cut.Direction.CROSSCUT,
                        area(305, 209, 4, 296),
                        Cut.Tool.SAW,
                        Cut.Purpose.DIVIDE,
                        Edge.X0,
                        0));
        var sheet =
                new PlannedSheet(StockSheet.bought(Designs.BOARD_18), pieces, cuts, List.of(area(309, 209, 696, 296)));

        var rows = SheetCuts.of(area(5, 5, 1000, 500), sheet, Set.of("B"));

        assertThat(rows).extracting(SheetCuts.Row::fromCorner).containsExactly(205.0, 305.0);
        assertThat(rows).extracting(SheetCuts.Row::fromEdge).containsExactly(200.0, 300.0);
        assertThat(rows).extracting(SheetCuts.Row::frees).containsExactly(List.of("A"), List.of("B", "offcut"));
        assertThat(rows).extracting(SheetCuts.Row::waits).containsExactly(false, true);
    }
}
