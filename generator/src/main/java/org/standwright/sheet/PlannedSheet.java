package org.standwright.sheet;

import java.util.List;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;

/**
 * One board and what becomes of it.
 *
 * @param cuts in the order of their numbers, which count on over all boards of the material
 * @param offcuts what remains and is worth keeping, in one rectangle each
 */
public record PlannedSheet(StockSheet from, List<PlacedPiece> pieces, List<Cut> cuts, List<Area> offcuts) {
    public PlannedSheet {
        pieces = List.copyOf(pieces);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }

    /** The board as it comes. */
    public Area board() {
        return new Area(0, 0, SheetUnit.down(from.length()), SheetUnit.down(from.width()));
    }

    /** What is left of the board after trimming. */
    public Area trimmed(Saw saw) {
        var trim = saw.trim();
        int left = SheetUnit.up(trim.left());
        int bottom = SheetUnit.up(trim.bottom());
        return new Area(
                left,
                bottom,
                board().length() - left - SheetUnit.up(trim.right()),
                board().width() - bottom - SheetUnit.up(trim.top()));
    }
}
