package org.standwright.design.kit;

import java.util.Optional;
import java.util.OptionalInt;
import org.standwright.geom.Grid;
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
    /** How much thinner than its dado a board may be before the joint is loose, mm; common practice, no source. */
    private static final double MOST_PLAY = 0.5;

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

    /**
     * The thickest board that goes into its material's dado, mm.
     *
     * @param fit how much wider a dado is than the board it was drawn for, mm
     */
    public double thickest(double fit) {
        return material.thickness() + fit;
    }

    /** The thinnest board that holds in its material's dado, mm; never thicker than the one it was drawn for. */
    public double thinnest(double fit) {
        return Math.min(thickest(fit) - MOST_PLAY, material.thickness());
    }

    /** Whether this board is near enough to the thickness that a design counts on: it goes into its dado and holds. */
    public boolean mates(double fit) {
        return !Grid.less(thickest(fit), thickness) && !Grid.less(thickness, thinnest(fit));
    }

    public boolean isBought() {
        return source == Source.BOUGHT;
    }
}
