package org.standwright.design;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/**
 * The boards that a stand is cut from, where they are not simply its sheets, as many as it takes.
 *
 * @param keep the smallest offcut worth keeping
 */
public record StockPlan(Keep keep, List<StockEntry> sheets) {
    /** The design's own sheets. */
    public static final StockPlan NONE = new StockPlan(Keep.USUAL, List.of());

    public StockPlan {
        sheets = List.copyOf(sheets);
    }

    /**
     * All boards that can be had of these goods, good by good. What is at hand comes beside what can be bought; as soon
     * as an entry of a good's material is bought, such entries are all that can be, and else the good itself is, as
     * often as it takes.
     *
     * @param units of the sizes in the boards' names
     */
    public List<StockSheet> boards(List<SheetGood> goods, Units units) {
        var boards = new ArrayList<StockSheet>();
        for (var good : goods) {
            var own = sheets.stream()
                    .map(entry -> entry.board(units))
                    .filter(board -> board.material().equals(good.material()))
                    .toList();
            if (own.stream().noneMatch(StockSheet::isBought)) {
                boards.add(StockSheet.bought(good));
            }
            own.stream().filter(StockSheet::isBought).forEach(boards::add);
            own.stream().filter(board -> !board.isBought()).forEach(boards::add);
        }
        return boards;
    }
}
