package org.standwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.Design;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Require;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

/**
 * The boards that can be had and the saw that cuts them.
 *
 * @param keep the smallest offcut worth keeping
 * @param fit how much wider a dado is than the board it was drawn for, mm
 */
public record Stock(List<StockSheet> sheets, Saw saw, Keep keep, double fit) {
    public Stock {
        sheets = List.copyOf(sheets);
        Require.notNegative("fit of a dado", fit, "stock");
    }

    /** For dados exactly as wide as their boards. */
    public Stock(List<StockSheet> sheets, Saw saw, Keep keep) {
        this(sheets, saw, keep, 0);
    }

    /** As many as it takes of each good. */
    public static Stock of(Saw saw, SheetGood... goods) {
        return new Stock(Stream.of(goods).map(StockSheet::bought).toList(), saw, Keep.USUAL);
    }

    /** What a design's parts can be cut from. */
    public static Stock of(Design design) {
        return new Stock(design.boards(), design.saw(), design.stock().keep(), design.fit());
    }

    /** The boards that parts of this material can be cut from, in the order of the stock. */
    public List<StockSheet> of(Material material) {
        return sheets.stream()
                .filter(sheet -> sheet.material().equals(material))
                .toList();
    }

    /** Whether a board is near enough to the thickness that a design counts on: it goes into its dado and holds. */
    public boolean mates(StockSheet board) {
        return board.mates(fit);
    }
}
