package org.standwright.sheet.search;

import org.standwright.design.kit.Saw;
import org.standwright.part.SheetGood;
import org.standwright.sheet.SheetUnit;

/**
 * Takes kerf and trim out of the search: with the kerf added once to every piece and once to the trimmed board, pieces
 * may touch. It is exact: a cut divides a board a into b + kerf + c, and (b + kerf) + (c + kerf) = a + kerf.
 *
 * @param kerf units
 * @param trim units off each edge
 */
record KerfAllowance(int kerf, int trim) {
    static KerfAllowance of(Saw saw) {
        return new KerfAllowance(SheetUnit.up(saw.kerf()), SheetUnit.up(saw.trim()));
    }

    int enlarged(double pieceSide) {
        return SheetUnit.up(pieceSide) + kerf;
    }

    /** One side of the trimmed board, enlarged. */
    int enlargedBoard(double side, SheetGood sheet) {
        int usable = SheetUnit.down(side) - 2 * trim;
        if (usable <= 0) {
            throw new IllegalArgumentException("trim of " + SheetUnit.mm(trim) + " mm on each edge leaves nothing of a"
                    + " side of " + side + " mm of '" + sheet.material().name() + "'; trim less.");
        }
        return usable + kerf;
    }

    /** What remains of an enlarged side in the workshop; 0 where the blade runs off the edge. */
    int real(int enlarged) {
        return Math.max(0, enlarged - kerf);
    }
}
