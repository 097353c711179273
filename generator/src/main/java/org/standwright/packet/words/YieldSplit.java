package org.standwright.packet.words;

import org.standwright.design.kit.Saw;
import org.standwright.sheet.Area;
import org.standwright.sheet.MaterialPlan;

/** What a material's boards become, units²: every unit of them once. */
public record YieldSplit(long parts, long kerf, long trim, long offcuts, long waste) {
    public static YieldSplit of(MaterialPlan material, Saw saw) {
        long trim = 0;
        long kerf = 0;
        long offcuts = 0;
        for (var sheet : material.sheets()) {
            trim += sheet.board().size() - sheet.trimmed(saw).size();
            kerf += sheet.cuts().stream().mapToLong(cut -> cut.kerf().size()).sum();
            offcuts += sheet.offcuts().stream().mapToLong(Area::size).sum();
        }
        long boards = material.sheetArea();
        long parts = material.pieceArea();
        return new YieldSplit(parts, kerf, trim, offcuts, boards - parts - kerf - trim - offcuts);
    }

    /** Area of the boards, units². */
    public long boards() {
        return parts + kerf + trim + offcuts + waste;
    }
}
