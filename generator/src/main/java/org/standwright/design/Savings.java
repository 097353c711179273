package org.standwright.design;

import java.util.List;
import org.standwright.part.SheetGood;

/**
 * What a maker would accept where that saves a sheet or money.
 *
 * @param width of the plan
 * @param depth of the plan
 * @param fewerDrawers how many drawers fewer a part of a bay may have
 * @param sheets others that may be bought
 * @param backInTwo whether the back may be made in two pieces
 * @param freeGrain sheets whose parts may be turned, though their grain shows
 */
public record Savings(
        Give width,
        Give depth,
        Give workingHeight,
        int fewerDrawers,
        List<OtherSheet> sheets,
        boolean backInTwo,
        List<SheetGood> freeGrain) {
    public Savings {
        sheets = List.copyOf(sheets);
        freeGrain = List.copyOf(freeGrain);
    }

    /** By how much a size may shrink and grow, mm; 0 for not at all. */
    public record Give(double less, double more) {}

    /**
     * A sheet that may be bought in the place of one that the stand uses.
     *
     * @param instead the one in use, told by its name
     */
    public record OtherSheet(SheetGood instead, SheetGood sheet) {}
}
