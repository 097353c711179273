package org.standwright.design.wall.row;

import java.util.List;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.StockSheet;
import org.standwright.part.Grain;

/** How long a strip can be: as its maker wishes, and as the boards that it is sawn from allow. */
final class LongestStrip {
    private LongestStrip() {}

    /** The boards count of which there are as many as it takes, or all if there are no such, mm. */
    static double of(WallDesign design) {
        var boards = design.boards().stream()
                .filter(board -> board.material().equals(design.cleat().sheet().material()))
                .toList();
        var endless = boards.stream().filter(board -> board.count().isEmpty()).toList();
        double given = longest(design, endless.isEmpty() ? boards : endless);
        return Math.min(given, design.cleat().longest().orElse(given));
    }

    private static double longest(WallDesign design, List<StockSheet> boards) {
        return boards.stream()
                .mapToDouble(board -> longest(design, board))
                .max()
                .orElseThrow(() -> new IllegalArgumentException(
                        "'" + design.name() + "' has no board for its cleats; list one of their material."));
    }

    private static double longest(WallDesign design, StockSheet board) {
        var trim = design.saw().trim();
        double length = board.length() - trim.offLength();
        return board.material().grain() == Grain.NONE ? Math.max(length, board.width() - trim.offWidth()) : length;
    }
}
