package org.standwright.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

/**
 * The boards that can be had and the saw that cuts them.
 *
 * @param keep the smallest offcut worth keeping
 */
public record Stock(List<StockSheet> sheets, Saw saw, Keep keep) {
    public Stock {
        sheets = List.copyOf(sheets);
    }

    /** As many as it takes of each good. */
    public static Stock of(Saw saw, SheetGood... goods) {
        return new Stock(Stream.of(goods).map(StockSheet::bought).toList(), saw, Keep.USUAL);
    }

    /** What a design's parts can be cut from: its goods as many as it takes. */
    public static Stock of(StandDesign design) {
        return new Stock(design.sheets().stream().map(StockSheet::bought).toList(), design.saw(), Keep.USUAL);
    }

    /** The boards that parts of this material can be cut from, in the order of the stock. */
    public List<StockSheet> of(Material material) {
        var found = new ArrayList<StockSheet>();
        for (var sheet : sheets) {
            if (sheet.material().equals(material)) {
                found.add(sheet);
            }
        }
        if (found.isEmpty()) {
            throw new IllegalArgumentException("stock holds no sheet of '" + material.name()
                    + "', but the cut list needs it; add its length and width to the stock.");
        }
        return found;
    }
}
