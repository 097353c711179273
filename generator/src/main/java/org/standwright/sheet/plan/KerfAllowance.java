package org.standwright.sheet.plan;

import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.design.kit.Trim;
import org.standwright.sheet.SheetUnit;

/**
 * Takes kerf and trim out of the sizes: see {@link org.standwright.sheet.job.PackingJob}.
 *
 * @param kerf units
 */
record KerfAllowance(int kerf, Trim trim) {
    static KerfAllowance of(Saw saw) {
        return new KerfAllowance(SheetUnit.up(saw.kerf()), saw.trim());
    }

    int enlarged(double pieceSide) {
        return Math.addExact(SheetUnit.up(pieceSide), kerf);
    }

    int length(StockSheet sheet) {
        return side(sheet, sheet.length(), trim.left(), trim.right());
    }

    int width(StockSheet sheet) {
        return side(sheet, sheet.width(), trim.bottom(), trim.top());
    }

    /** One side of the trimmed board, enlarged. */
    private int side(StockSheet sheet, double side, double from, double to) {
        int usable = SheetUnit.down(side) - SheetUnit.up(from) - SheetUnit.up(to);
        if (usable <= 0) {
            throw new IllegalArgumentException("trim of " + from + " and " + to + " mm leaves nothing of a side of "
                    + side + " mm of '" + sheet.name() + "'; trim less.");
        }
        return Math.addExact(usable, kerf);
    }
}
