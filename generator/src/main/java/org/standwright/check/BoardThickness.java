package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;

/** A board thinner or thicker than the design counts on moves all that its parts decide. */
final class BoardThickness implements Rule {
    /** What a shop's work does not show, mm; common practice, no source. */
    private static final double UNNOTICED = 0.1;

    @Override
    public List<Finding> check(Stand stand, Load load) {
        return stand.design().boards().stream()
                .filter(board -> Grid.less(UNNOTICED, Math.abs(difference(board))))
                .map(board -> found(board, stand))
                .toList();
    }

    private static Finding found(StockSheet board, Stand stand) {
        var units = stand.design().unit();
        double difference = difference(board);
        return new Finding(
                Severity.CAUTION,
                "board-thickness",
                board.name(),
                "Measured " + units.length(board.thickness()) + ", but the design counts on "
                        + units.length(board.material().thickness()) + ": parts cut from it are "
                        + units.length(Math.abs(difference)) + (difference < 0 ? " thinner" : " thicker")
                        + ", and the height stack and the widths change by as much for each layer.",
                "common practice, no source");
    }

    private static double difference(StockSheet board) {
        return board.thickness() - board.material().thickness();
    }
}
