package org.standwright.packet.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;

/** What hangs where. */
final class HolderPage implements WallPages.Page {
    @Override
    public void print(WallPaper paper, Flow flow) {
        if (paper.walls().holders().isEmpty()) {
            return;
        }
        flow.freshPage();
        flow.heading("Holders");
        flow.lead("x is the left edge of the holder from the left end of the wall, mass that of what it holds.");
        var rows = new ArrayList<List<String>>();
        paper.walls().holders().forEach(holder -> rows.add(row(holder, paper)));
        flow.table(new Table(
                List.of(
                        Column.words("Holder"),
                        Column.words("Wall"),
                        Column.figures("Row"),
                        Column.figures("x"),
                        Column.prose("Holds"),
                        Column.figures("Mass"),
                        Column.figures("Limit"),
                        Column.prose("Beyond it"),
                        Column.words("Lock"),
                        Column.prose("Lower back against")),
                rows));
        flow.paragraph("Lock: screws through the back into the strip once it hangs, so that a knock from below does "
                + "not lift it off.");
    }

    private static List<String> row(HungHolder hung, WallPaper paper) {
        var holder = hung.made().holder();
        var things = holder.things();
        var units = paper.units();
        return List.of(
                holder.name(),
                paper.walls().wall(hung.wall()).wall().name(),
                String.valueOf(hung.row()),
                units.bareLength(hung.x()),
                things.count() + " of " + units.bareLength(things.width()) + " × " + units.bareLength(things.depth())
                        + " × " + units.bareLength(things.height()),
                units.mass(things.wholeMass()),
                paper.labels().limit(holder.name()).orElse("–"),
                paper.labels().weakest(holder.name()).orElse("–"),
                holder.lock() ? "screws" : "–",
                backing(hung));
    }

    private static String backing(HungHolder hung) {
        return switch (hung.backing().by()) {
            case OWN_STRIP -> "its own strip";
            case LOWER_STRIP -> "a lower strip";
            case SPACER -> "a spacer";
        };
    }
}
