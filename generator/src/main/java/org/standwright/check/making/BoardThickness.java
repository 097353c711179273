package org.standwright.check.making;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.StockSheet;
import org.standwright.geom.Grid;

/** A board thinner or thicker than the design counts on moves all that its parts decide. */
public final class BoardThickness implements Rule<LoadedStand> {
    private static final RuleText TEXT = RuleText.plain(
            "board-thickness", "Is every board as thick as the design counts on?", "common practice, no source");

    /** What a shop's work does not show, mm; common practice, no source. */
    private static final double UNNOTICED = 0.1;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().boards().stream()
                .filter(board -> Grid.less(UNNOTICED, Math.abs(difference(board))))
                .map(board -> found(board, stand))
                .toList();
    }

    private static Finding found(StockSheet board, Stand stand) {
        var units = stand.design().unit();
        double difference = difference(board);
        return Finding.caution(
                TEXT,
                board.name(),
                "Measured " + units.length(board.thickness()) + ", but the design counts on "
                        + units.length(board.material().thickness()) + ": parts cut from it are "
                        + units.length(Math.abs(difference)) + (difference < 0 ? " thinner" : " thicker")
                        + ", and the height stack and the widths change by as much for each layer.");
    }

    private static double difference(StockSheet board) {
        return board.thickness() - board.material().thickness();
    }
}
