package org.standwright.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;
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
    /** How much thinner than its dado a board may be before the joint is loose, mm; common practice, no source. */
    private static final double MOST_PLAY = 0.5;

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
    public static Stock of(StandDesign design) {
        return new Stock(
                design.boards(),
                design.saw(),
                design.stock().keep(),
                design.carcass().fit());
    }

    /** The boards that parts of this material can be cut from, in the order of the stock. */
    public List<StockSheet> of(Material material) {
        return sheets.stream()
                .filter(sheet -> sheet.material().equals(material))
                .toList();
    }

    /** Width of a dado for this material, mm. */
    public double dado(Material material) {
        return material.thickness() + fit;
    }

    /** Whether a board as thick as this one goes into its material's dado and holds there. */
    public boolean mates(StockSheet board) {
        double dado = dado(board.material());
        return !Grid.less(dado, board.thickness()) && !Grid.less(board.thickness(), dado - MOST_PLAY);
    }
}
