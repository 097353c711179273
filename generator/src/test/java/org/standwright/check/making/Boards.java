package org.standwright.check.making;

import org.standwright.design.Designs;
import org.standwright.part.SheetGood;

/** Sheets for tests. */
final class Boards {
    private Boards() {}

    static SheetGood thick(double thickness) {
        return Designs.sheet("board " + thickness, thickness, 2440, 1220);
    }
}
