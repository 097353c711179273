package org.standwright.design.kit;

import java.util.Optional;
import java.util.OptionalInt;
import org.standwright.geom.Require;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;
import org.standwright.unit.Money;

/**
 * Boards of one size that can be had, their grain along their length.
 *
 * @param name what the plan calls them
 * @param thickness as measured on this very board, mm
 * @param count how many there are; empty for as many as it takes
 * @param price of one; what is at hand costs nothing
 */
public record StockSheet(
        String name,
        Material material,
        double length,
        double width,
        double thickness,
        OptionalInt count,
        Optional<Money> price,
        Source source) {
    /** Where a board comes from. */
    public enum Source {
        BOUGHT,
        /** Left over from earlier work, or paid for long ago. */
        AT_HAND
    }

    public StockSheet {
        Require.named("stock sheet", name);
        Require.positive("length", length, name);
        Require.positive("width", width, name);
        Require.positive("thickness", thickness, name);
        count.ifPresent(there -> Require.positive("count", there, name));
    }

    /** As many as it takes of what a shop sells. */
    public static StockSheet bought(SheetGood good) {
        return new StockSheet(
                good.material().name(),
                good.material(),
                good.length(),
                good.width(),
                good.material().thickness(),
                OptionalInt.empty(),
                good.price(),
                Source.BOUGHT);
    }

    public boolean isBought() {
        return source == Source.BOUGHT;
    }
}
