package org.standwright.sheet;

import java.util.HashSet;
import java.util.List;
import org.standwright.design.kit.Saw;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

/**
 * The boards that can be had, as many of each as it takes, and the saw that cuts them.
 *
 * @param sheets one good for each material
 */
public record Stock(List<SheetGood> sheets, Saw saw) {
    public Stock {
        sheets = List.copyOf(sheets);
        var seen = new HashSet<Material>();
        for (var sheet : sheets) {
            if (!seen.add(sheet.material())) {
                throw new IllegalArgumentException(
                        "stock holds two sheet sizes of '" + sheet.material().name() + "'; keep the one to buy.");
            }
        }
    }

    public static Stock of(Saw saw, SheetGood... sheets) {
        return new Stock(List.of(sheets), saw);
    }

    /** The board that parts of this material are cut from. */
    public SheetGood sheetOf(Material material) {
        return sheets.stream()
                .filter(sheet -> sheet.material().equals(material))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("stock holds no sheet of '" + material.name()
                        + "', but the cut list needs it; add its length and width to the stock."));
    }
}
