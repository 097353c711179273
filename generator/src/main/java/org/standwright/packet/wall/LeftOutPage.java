package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.standwright.design.wall.built.ShortRun;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.SawWords;
import org.standwright.unit.Units;

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
            alike(wall.shortRuns(), paper.units())
                    .forEach((left, numbers) ->
                            rows.add(List.of(wall.wall().name(), SawWords.runs(numbers), left.along(), left.why())));
        }
        if (!rows.isEmpty()) {
            flow.heading("Bare wall without a strip");
            flow.table(new Table(
                    List.of(
                            Column.words("Wall"),
                            Column.figures("Rows"),
                            Column.figures("From the left end"),
                            Column.prose("Why")),
                    rows));
        }
    }

    /** The same part of the wall for the same reason. */
    private record Left(String along, String why) {}

    /** Numbers of the rows that lose it, from the lowest. */
    private static Map<Left, List<Integer>> alike(List<ShortRun> runs, Units units) {
        var alike = new LinkedHashMap<Left, List<Integer>>();
        for (var run : runs) {
            var along = units.bareLength(run.along().from()) + " to "
                    + units.bareLength(run.along().to());
            alike.computeIfAbsent(new Left(along, run.why()), first -> new ArrayList<>())
                    .add(run.row());
        }
        return alike;
    }
}
