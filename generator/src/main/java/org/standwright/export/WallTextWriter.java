package org.standwright.export;

import static org.standwright.export.TextTable.Align.LEFT;
import static org.standwright.export.TextTable.Align.RIGHT;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.ShortRun;
import org.standwright.design.wall.built.Strip;
import org.standwright.drawing.wall.SignedHeight;
import org.standwright.unit.Units;

/** What walls of cleats come to, as plain text: bare walls, rows, and what hangs where or nowhere. */
public final class WallTextWriter {
    private final CleatWall wall;
    private final Units units;
    private final List<String> lines = new ArrayList<>();

    private WallTextWriter(CleatWall wall) {
        this.wall = wall;
        this.units = wall.design().unit();
    }

    /** Writes UTF-8. */
    public static void write(CleatWall wall, OutputStream out) throws IOException {
        var page = new WallTextWriter(wall);
        page.lines.add(wall.design().name());
        wall.walls().forEach(page::face);
        page.holders();
        page.unplaced();
        out.write((String.join("\n", page.lines) + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void face(CleatedWall face) {
        var bounds = face.outline().bounds();
        heading("Wall " + face.wall().name() + ", " + units.bareLength(bounds.width()) + " x "
                + units.length(bounds.height()) + ", bare: "
                + Units.MM.area(face.bare().size()) + " ("
                + Units.INCH.area(face.bare().size()) + ")");
        lines.add("Rows by the high edge of their strips, from the level line "
                + units.length(wall.design().levelLine()) + " above the floor's highest point:");
        var table = new TextTable(LEFT, RIGHT, LEFT);
        face.rows().forEach(row -> row(row, face, table));
        lines.addAll(table.lines());
        face.notes().forEach(note -> lines.addAll(WrappedText.lines("", "", note)));
    }

    private void row(Row row, CleatedWall face, TextTable table) {
        var words = new ArrayList<String>();
        row.strips().forEach(strip -> words.add(strip(strip)));
        face.shortRuns().stream()
                .filter(run -> run.row() == row.number())
                .forEach(run -> words.add("left out " + run(run)));
        for (int i = 0; i < Math.max(1, words.size()); i++) {
            table.add(
                    i == 0 ? "row " + row.number() : "",
                    i == 0 ? SignedHeight.of(row.height() - wall.design().levelLine(), units) : "",
                    words.isEmpty() ? "no bare wall" : words.get(i));
        }
    }

    private String strip(Strip strip) {
        return "strip " + units.length(strip.along().length()) + ", from "
                + units.bareLength(strip.along().from()) + " to "
                + units.length(strip.along().to()) + ", "
                + strip.studs().size() * strip.screws().size() + " screws";
    }

    private String run(ShortRun run) {
        return units.bareLength(run.along().from()) + " to "
                + units.length(run.along().to()) + ": " + run.why();
    }

    private void holders() {
        if (wall.holders().isEmpty()) {
            return;
        }
        heading("Holders, x from the left end of their wall");
        var table = new TextTable(LEFT, LEFT, RIGHT, LEFT, LEFT);
        wall.holders().forEach(holder -> holder(holder, table));
        lines.addAll(table.lines());
    }

    private void holder(HungHolder holder, TextTable table) {
        var size = holder.made().box().size();
        table.add(
                holder.name(),
                wall.wall(holder.wall()).wall().name() + " row " + holder.row(),
                "x " + units.length(holder.x()),
                units.bareLength(size.x()) + " x " + units.bareLength(size.y()) + " x " + units.length(size.z()),
                "lower back on "
                        + switch (holder.backing().by()) {
                            case OWN_STRIP -> "its own strip";
                            case LOWER_STRIP -> "a lower strip";
                            case SPACER -> "a spacer";
                        });
    }

    private void unplaced() {
        if (wall.unplaced().isEmpty()) {
            return;
        }
        heading("Not hung");
        wall.unplaced()
                .forEach(left ->
                        lines.addAll(WrappedText.lines("", "", left.holder().name() + ": " + left.why())));
    }

    private void heading(String text) {
        lines.add("");
        lines.add(text);
    }
}
