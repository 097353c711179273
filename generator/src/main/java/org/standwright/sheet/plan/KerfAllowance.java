package org.standwright.sheet.plan;

import java.util.List;
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
    /** Longer than any board, and far from what an integer cannot hold, mm. */
    private static final double LONGEST = 100_000;

    static KerfAllowance of(Saw saw) {
        return new KerfAllowance(SheetUnit.up(within("kerf", saw.kerf())), saw.trim());
    }

    int enlarged(String what, double pieceSide) {
        return SheetUnit.up(within(what, pieceSide)) + kerf;
    }

    int length(StockSheet sheet) {
        return side(sheet, sheet.length(), trim.left(), trim.right());
    }

    int width(StockSheet sheet) {
        return side(sheet, sheet.width(), trim.bottom(), trim.top());
    }

    /** One side of the trimmed board, enlarged. */
    private int side(StockSheet sheet, double side, double from, double to) {
        int usable = SheetUnit.down(within(sheet.name(), side)) - SheetUnit.up(from) - SheetUnit.up(to);
        if (usable <= 0) {
            throw new ImpossiblePlanException(
                    "/saw/trim",
                    "trim of " + from + " and " + to + " mm leaves nothing of a side of " + side + " mm of '"
                            + sheet.name() + "'.",
                    List.of("Trim less, or leave it out of the stock."));
        }
        return usable + kerf;
    }

    private static double within(String what, double mm) {
        if (mm > LONGEST) {
            throw new ImpossiblePlanException(
                    "",
                    "a side of '" + what + "' is " + mm + " mm, but no board is longer than " + LONGEST + " mm.",
                    List.of("Look for a digit too many."));
        }
        return mm;
    }
}
