package org.standwright.sheet;

import java.util.List;

/**
 * One board and what becomes of it.
 *
 * @param cuts in cutting order, trim cuts left out
 * @param offcuts what remains in one rectangle each, nothing narrower than {@link #NARROWEST_OFFCUT}
 */
public record PlannedSheet(List<PlacedPiece> pieces, List<Cut> cuts, List<Area> offcuts) {
    /** What remains and is narrower than this goes into the bin: 10 mm, in units. */
    public static final int NARROWEST_OFFCUT = 10 * SheetUnit.PER_MM;

    public PlannedSheet {
        pieces = List.copyOf(pieces);
        cuts = List.copyOf(cuts);
        offcuts = List.copyOf(offcuts);
    }
}
