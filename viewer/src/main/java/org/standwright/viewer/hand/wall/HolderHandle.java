package org.standwright.viewer.hand.wall;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Row;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Handle;
import org.standwright.viewer.hand.change.Move;
import org.standwright.viewer.hand.change.Tape;

/**
 * A holder that is hung on another row, or further along; afterwards it has a place of its own in the file.
 *
 * @param text of the file
 * @param key pointer of the holder in it
 * @param written as the file has it
 */
record HolderHandle(String text, String key, ObjectNode written, HungHolder holder, List<Seen> walls, Tape tape)
        implements Handle {
    @Override
    public String words() {
        return holder.name();
    }

    @Override
    public Rect area() {
        return here().shown(holder.area());
    }

    private Seen here() {
        return walls.get(holder.wall() - 1);
    }

    @Override
    public Way way() {
        return Way.ANYWHERE;
    }

    @Override
    public Move dragged(double right, double up) {
        double middle = (area().x0() + area().x1()) / 2 + right;
        var wall = walls.stream()
                .min(Comparator.comparingDouble(other -> distance(other.bounds(), middle)))
                .orElseThrow();
        var rows = rows(wall);
        double height = holder.rowHeight() + up;
        var row = rows.stream()
                .min(Comparator.comparingDouble(other -> Math.abs(other.height() - height)))
                .orElseThrow();
        double x = here().left() + holder.x() + right - wall.left();
        return to(wall, row, right == 0 ? x : tape.snapped(x));
    }

    @Override
    public Move nudged(int right, int up) {
        var rows = new ArrayList<>(rows(here()));
        rows.sort(Comparator.comparingDouble(Row::height));
        int now = 0;
        while (now + 1 < rows.size() && rows.get(now).number() < holder.row()) {
            now++;
        }
        var row = rows.get(Math.max(0, Math.min(rows.size() - 1, now + up)));
        double x = right == 0 ? holder.x() : tape.snapped(holder.x() + right * tape.step());
        return to(here(), row, x);
    }

    /** Those of a wall that something can hang on; the one that it hangs on is one of them. */
    private static List<Row> rows(Seen wall) {
        return wall.wall().rows().stream()
                .filter(row -> !row.strips().isEmpty())
                .toList();
    }

    private static double distance(Rect wall, double x) {
        return Math.max(0, Math.max(wall.x0() - x, x - wall.x1()));
    }

    private Move to(Seen wall, Row row, double wanted) {
        var box = holder.made().box();
        double most = wall.wall().outline().bounds().x1() - box.max().x();
        double x = Math.max(-box.min().x(), Math.min(most, wanted));
        var area = wall.shown(new Rect(
                x + box.min().x(),
                row.height() + box.min().z(),
                x + box.max().x(),
                row.height() + box.max().z()));
        var sizes = List.of(
                "row " + row.number() + ", " + tape.words(row.height()) + " up",
                tape.words(x) + " from the left",
                tape.words(most - x) + " to the right end");
        return new Move(text(wall, row, x), sizes, area);
    }

    private String text(Seen wall, Row row, double x) {
        if (wall == here() && row.number() == holder.row() && Grid.same(x, holder.x())) {
            return text;
        }
        var after = written.deepCopy();
        var place = after.withObjectProperty("place");
        place.put("wall", wall.wall().wall().name()).put("row", row.number());
        place.set("x", tape.written(x));
        return Differences.written(text, key, written, after);
    }
}
