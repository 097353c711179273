package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.wall.WallPlan;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.Counted;
import org.standwright.packet.words.FindingsInShort;

/** What it is, and how much of it. */
final class TitlePage implements WallPages.Page {
    private static final double BELOW = 6;

    @Override
    public void print(WallPaper paper, Flow flow) {
        var walls = paper.walls();
        flow.title(paper.design().name());
        flow.paragraph("French cleats on " + Counted.of(walls.walls().size(), "wall") + " for "
                + Counted.of(walls.holders().size(), "holder") + ". Heights of rows are those of the strips' high "
                + "edges, above (+) or below (−) one level line struck round the room "
                + paper.units().length(paper.design().levelLine()) + " above the highest point of the floor.");
        if (!walls.unplaced().isEmpty()) {
            flow.paragraph("Without a place, and so on none of these drawings: "
                    + Counted.of(walls.unplaced().size(), "holder") + "; see 'Not hung' for the reasons.");
        }
        FindingsInShort.of(paper.findings()).ifPresent(flow::paragraph);
        flow.heading("Walls");
        flow.table(table(paper));
        flow.figure(WallPlan.of(paper.walls(), flow.width(), flow.left() - BELOW, flow.measure()));
    }

    private static Table table(WallPaper paper) {
        var rows = new ArrayList<List<String>>();
        for (var wall : paper.walls().walls()) {
            var amounts = new Amounts(wall, paper.units());
            var bounds = wall.outline().bounds();
            rows.add(List.of(
                    wall.wall().name(),
                    paper.units().bareLength(bounds.width()) + " × "
                            + paper.units().bareLength(bounds.height()),
                    amounts.bare(),
                    String.valueOf(amounts.rows()),
                    String.valueOf(wall.strips().size()),
                    paper.units().run(amounts.length()),
                    String.valueOf(amounts.screws())));
        }
        return new Table(
                List.of(
                        Column.words("Wall"),
                        Column.figures("Width × height"),
                        Column.figures("Bare area"),
                        Column.figures("Rows"),
                        Column.figures("Strips"),
                        Column.figures("Length"),
                        Column.figures("Screws")),
                rows);
    }
}
