package org.standwright.design.wall.row;

import java.util.List;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.ShortRun;

/**
 * The rows of one wall.
 *
 * @param rows from the lowest
 * @param shortRuns bare wall that they leave out, from the lowest row, each from the left
 */
public record PlannedRows(List<Row> rows, List<ShortRun> shortRuns) {
    public PlannedRows {
        rows = List.copyOf(rows);
        shortRuns = List.copyOf(shortRuns);
    }
}
