package org.standwright.sheet;

import java.util.List;
import java.util.Optional;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/**
 * All boards of one sheet good.
 *
 * @param lowerBound no plan can do with fewer sheets
 */
public record MaterialPlan(SheetGood sheet, List<PlannedSheet> sheets, int lowerBound) {
    public MaterialPlan {
        sheets = List.copyOf(sheets);
    }

    /** Price of all its boards; empty when the price of one is not given. */
    public Optional<Money> price() {
        return sheet.price().map(each -> each.times(sheets.size()));
    }

    /** Area of the pieces, units². */
    public long pieceArea() {
        return sheets.stream()
                .flatMap(planned -> planned.pieces().stream())
                .mapToLong(piece -> piece.area().size())
                .sum();
    }

    /** Area of the boards as bought, units². */
    public long sheetArea() {
        return (long) SheetUnit.down(sheet.length()) * SheetUnit.down(sheet.width()) * sheets.size();
    }

    /** Area of pieces over area of boards, 0 to 1. */
    public double yield() {
        return (double) pieceArea() / sheetArea();
    }
}
