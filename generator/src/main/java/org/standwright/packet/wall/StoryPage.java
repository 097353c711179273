package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.standwright.drawing.wall.SignedHeight;
import org.standwright.drawing.wall.StoryStick;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** Heights of the rows, and the stick that carries them round the room. */
final class StoryPage implements WallPages.Page {
    private static final double ABOVE = 60;

    @Override
    public void print(WallPaper paper, Flow flow) {
        var stick = StoryStick.of(paper.walls());
        flow.freshPage();
        flow.heading("Story stick");
        flow.paragraph("Mark a straight batten from this table, all marks from its one zero, never from mark to mark. "
                + "Hold the zero on the level line and transfer the high edges; dashed on the stick: the strips' lower "
                + "edges. Do not measure from the floor.");
        flow.table(table(stick));
        double room = Math.max(flow.height() / 2, flow.left() - 4);
        flow.figure(stick.figure(flow.width(), Math.min(room, flow.height() - ABOVE), flow.measure()));
    }

    /** From the highest row, as they are on the wall. */
    private static Table table(StoryStick stick) {
        var units = stick.units();
        var rows = new ArrayList<List<String>>();
        for (var mark : stick.marks()) {
            rows.add(List.of(
                    "row " + mark.row(),
                    SignedHeight.of(mark.edge(), units),
                    SignedHeight.of(mark.lower(), units),
                    mark.step().map(units::bareLength).orElse("–")));
        }
        Collections.reverse(rows);
        return new Table(
                List.of(
                        Column.words("Row"),
                        Column.figures("High edge from the level line"),
                        Column.figures("Strip's lower edge"),
                        Column.figures("From the row below")),
                rows);
    }
}
