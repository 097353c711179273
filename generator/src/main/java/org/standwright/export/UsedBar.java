package org.standwright.export;

import org.standwright.check.Gauge;

/** How much of a limit is used, as a bar of plain letters: '[########............] 0.41'. */
final class UsedBar {
    private static final int WIDE = 20;

    private UsedBar() {}

    static String of(Gauge gauge) {
        int filled = (int) Math.round(Math.min(1, gauge.used()) * WIDE);
        return "[" + "#".repeat(filled) + ".".repeat(WIDE - filled) + "] " + gauge.usedWords();
    }
}
