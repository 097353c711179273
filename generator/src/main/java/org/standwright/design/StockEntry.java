package org.standwright.design;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;
import org.standwright.unit.Units;

/**
 * Boards of one size as a design file lists them.
 *
 * @param sheet of which material they are, and how large where no other size is given
 * @param name what the sheet plan calls them
 * @param length along the grain, mm
 * @param width across the grain, mm
 * @param count how many there are; without it, as many as it takes of what is bought, one of what is at hand
 * @param thickness as measured on these very boards, mm
 * @param price of one; without it, the sheet's own where the size is the sheet's
 * @param atHand already there, so that it costs nothing
 */
public record StockEntry(
        SheetGood sheet,
        Optional<String> name,
        OptionalDouble length,
        OptionalDouble width,
        OptionalInt count,
        OptionalDouble thickness,
        Optional<Money> price,
        boolean atHand) {
    public StockEntry {
        if (atHand && price.isPresent()) {
            throw new IllegalArgumentException("A board of '" + sheet.material().name()
                    + "' is at hand and has a price of " + price.get()
                    + ", but what is at hand costs nothing. Leave one of the two out.");
        }
    }

    /** @param units of the size in its name, where it has none of its own */
    public StockSheet board(Units units) {
        return new StockSheet(
                name.orElseGet(() -> ownName(units)),
                sheet.material(),
                boardLength(),
                boardWidth(),
                thickness.orElse(sheet.material().thickness()),
                atHand && count.isEmpty() ? OptionalInt.of(1) : count,
                atHand ? Optional.empty() : price.or(this::sheetPrice),
                atHand ? StockSheet.Source.AT_HAND : StockSheet.Source.BOUGHT);
    }

    private String ownName(Units units) {
        var size = isSheetsSize() ? "" : ", " + units.length(boardLength()) + " x " + units.length(boardWidth());
        return sheet.material().name() + size + (atHand ? ", at hand" : "");
    }

    private Optional<Money> sheetPrice() {
        return isSheetsSize() ? sheet.price() : Optional.empty();
    }

    private boolean isSheetsSize() {
        return Grid.same(boardLength(), sheet.length()) && Grid.same(boardWidth(), sheet.width());
    }

    private double boardLength() {
        return length.orElse(sheet.length());
    }

    private double boardWidth() {
        return width.orElse(sheet.width());
    }
}
