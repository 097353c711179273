package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** What is not on the wall, and why: holders without a place, bare wall without a strip, obstacles taken as one. */
final class LeftOutPage implements WallPages.Page {
    @Override
    public void print(WallPaper paper, Flow flow) {
        unplaced(paper, flow);
        shortRuns(paper, flow);
        var notes = paper.walls().walls().stream()
                .flatMap(wall -> wall.notes().stream())
                .toList();
        if (!notes.isEmpty()) {
            flow.heading("About the obstacles");
            notes.forEach(note -> flow.item(Mark.BOX_ONLY, note));
        }
    }

    private static void unplaced(WallPaper paper, Flow flow) {
        if (paper.walls().unplaced().isEmpty()) {
            return;
        }
        flow.heading("Not hung");
        flow.table(new Table(
                List.of(Column.words("Holder"), Column.prose("Why")),
                paper.walls().unplaced().stream()
                        .map(unplaced -> List.of(unplaced.holder().name(), unplaced.why()))
                        .toList()));
    }

    private static void shortRuns(WallPaper paper, Flow flow) {
        var rows = new ArrayList<List<String>>();
        for (var wall : paper.walls().walls()) {
            for (var run : wall.shortRuns()) {
                rows.add(List.of(
                        wall.wall().name(),
                        String.valueOf(run.row()),
                        paper.units().bareLength(run.along().from()) + " to "
                                + paper.units().bareLength(run.along().to()),
                        run.why()));
            }
        }
        if (!rows.isEmpty()) {
            flow.heading("Bare wall without a strip");
            flow.table(new Table(
                    List.of(
                            Column.words("Wall"),
                            Column.figures("Row"),
                            Column.figures("From the left end"),
                            Column.prose("Why")),
                    rows));
        }
    }
}
