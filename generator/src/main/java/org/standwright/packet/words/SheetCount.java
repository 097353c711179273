package org.standwright.packet.words;

import java.util.List;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.MaterialPlan;

/** How many boards of one kind a plan takes. */
public record SheetCount(StockSheet from, long sheets) {

    /** One count for each kind of board, in the order of first use. */
    public static List<SheetCount> of(MaterialPlan material) {
        return material.sheets().stream()
                .map(sheet -> sheet.from())
                .distinct()
                .map(from -> new SheetCount(
                        from,
                        material.sheets().stream()
                                .filter(sheet -> sheet.from().equals(from))
                                .count()))
                .toList();
    }
}
