package org.standwright.sheet;

import java.util.List;

/**
 * One board and what becomes of it.
 *
 * @param cuts in cutting order, trim cuts left out
 * @param offcuts what remains in one rectangle each
 */
public record PlannedSheet(List<PlacedPiece> pieces, List<Cut> cuts, List<Area> offcuts) {
    public PlannedSheet {
        pieces = List.copyOf(pieces);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }
}
