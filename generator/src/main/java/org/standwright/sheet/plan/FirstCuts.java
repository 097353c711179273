package org.standwright.sheet.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.StockSheet;
import org.standwright.sheet.SheetUnit;

/**
 * Whether a saw makes any first cut through a board as it comes: its edges are there still, and where neither a rip nor a
 * crosscut goes through them, they cannot be trimmed either.
 */
record FirstCuts(Saw saw) {
    static FirstCuts of(Saw saw) {
        return new FirstCuts(saw);
    }

    /** Those that it does. */
    List<StockSheet> sawn(List<StockSheet> sheets) {
        var sawn = sheets.stream().filter(this::reaches).toList();
        if (sawn.isEmpty()) {
            throw refusal(sheets.get(0));
        }
        return sawn;
    }

    private boolean reaches(StockSheet sheet) {
        boolean trimmed = SheetUnit.up(saw.trim().offLength()) > 0
                || SheetUnit.up(saw.trim().offWidth()) > 0;
        return !trimmed
                || saw.breakDown().isPresent()
                || isWithin(sheet.length(), saw.longestRip())
                || isWithin(sheet.width(), saw.longestCrosscut());
    }

    private static boolean isWithin(double length, OptionalDouble longest) {
        return longest.isEmpty() || SheetUnit.down(length) <= SheetUnit.down(longest.getAsDouble());
    }

    private ImpossiblePlanException refusal(StockSheet sheet) {
        return new ImpossiblePlanException(
                "/saw",
                "a board of '" + sheet.name() + "' is " + mm(sheet.length()) + " x " + mm(sheet.width())
                        + " mm before its edges are trimmed, and a saw that cuts "
                        + mm(saw.longestRip().orElseThrow()) + " mm in a rip and "
                        + mm(saw.longestCrosscut().orElseThrow()) + " mm in a crosscut goes through it neither way.",
                List.of(
                        "Add a break-down saw: \"breakDown\": {}.",
                        "Use a saw that goes through it: \"longestCrosscut\": \"" + mm(sheet.width()) + " mm\"."));
    }

    private static String mm(double mm) {
        return BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP).toPlainString();
    }
}
