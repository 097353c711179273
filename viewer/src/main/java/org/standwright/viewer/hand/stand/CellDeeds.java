package org.standwright.viewer.hand.stand;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.viewer.hand.change.Deed;
import org.standwright.viewer.hand.change.Differences;
import org.standwright.viewer.hand.change.Tape;

/** What may be done to one cell of a bay's column. */
final class CellDeeds {
    private final String text;
    private final StandDesign design;
    private final Bays.One bay;
    private final int at;
    private final List<Cell> cells;
    private final Tape tape;

    CellDeeds(String text, StandDesign design, Bays.One bay, int at) {
        this.text = text;
        this.design = design;
        this.bay = bay;
        this.at = at;
        this.cells = bay.column().cells();
        this.tape = bay.column().tape();
    }

    private Cell cell() {
        return cells.get(at);
    }

    private String name(int cell) {
        return bay.fronts().get(cell).name();
    }

    Deed addDrawer() {
        var added = new ArrayList<>(cells);
        int place = at;
        if (!cell().isDrawer()) {
            added.add(at, new NewCells(design).drawer());
            return done("Add a drawer to " + bay.name(), Column.elastic(added, at + 1), place);
        }
        boolean shares = cell().share() != Cell.Share.GIVEN || cells.stream().anyMatch(Cell::isElastic);
        if (shares) {
            added.add(++place, new Cell(cell().source(), cell().share(), cell().height()));
            return done("Add a drawer to " + bay.name(), added, place);
        }
        return done("Add a drawer to " + bay.name(), crowded(), place + 1);
    }

    /** Given fronts in the same height, one more of them, each as much lower as the others are. */
    private List<Cell> crowded() {
        var run =
                cells.stream().filter(cell -> cell.source() == cell().source()).toList();
        double height = run.stream().mapToDouble(Cell::height).sum();
        double left = height - gap();
        double own = tape.down(left / (run.size() + 1));
        var crowded = new ArrayList<Cell>();
        for (var other : cells) {
            boolean gives = other.source() == cell().source();
            crowded.add(gives ? other.given(tape.down(other.height() * (left - own) / height)) : other);
        }
        double rest = left
                - own
                - crowded.stream()
                        .filter(cell -> cell.source() == cell().source())
                        .mapToDouble(Cell::height)
                        .sum();
        crowded.add(at + 1, new Cell(cell().source(), Cell.Share.GIVEN, own + rest));
        return crowded;
    }

    Deed remove() {
        var what = "Remove " + name(at);
        if (cells.size() == 1) {
            return Deed.impossible(
                    what, bay.name() + " would be empty. Make it an open shelf, or remove the whole bay.");
        }
        var left = new ArrayList<>(cells);
        left.remove(at);
        return done(what, Column.elastic(left, at), Math.min(at, left.size() - 1));
    }

    Deed split() {
        var what = "Split " + name(at) + " in two";
        if (cell().source().path("kind").asText().equals("divided")) {
            return Deed.impossible(what, "It is divided already. Split what is in it.");
        }
        double between = cell().isDrawer() ? gap() : panel();
        double upper = tape.down((cell().height() - between) / 2);
        double lower = cell().height() - between - upper;
        var split = new ArrayList<>(cell().isDrawer() ? bay.column().settled(at, at) : cells);
        var whole = split.get(at);
        split.set(at, whole.given(upper));
        split.add(at + 1, new Cell(second(whole), whole.share(), lower));
        return done(what, whole.isDrawer() ? split : Column.elastic(split, at + 1), at);
    }

    /** Where the lower half comes from: fronts go on in the same list. */
    private static ObjectNode second(Cell whole) {
        if (whole.isDrawer()) {
            return whole.source();
        }
        var second = whole.source().deepCopy();
        second.remove("note");
        return second;
    }

    Deed join() {
        if (at + 1 == cells.size()) {
            return Deed.impossible("Join " + name(at), "There is nothing below it to join it with.");
        }
        var what = "Join " + name(at) + " with " + name(at + 1);
        var next = cells.get(at + 1);
        boolean drawers = cell().isDrawer() && next.isDrawer();
        if (!drawers && !cell().source().path("kind").equals(next.source().path("kind"))) {
            return Deed.impossible(what, "Only two of a kind can be joined. Make one of them what the other is first.");
        }
        var joined = new ArrayList<>(drawers ? bay.column().settled(at, at + 1) : cells);
        boolean elastic = joined.get(at).isElastic() || joined.get(at + 1).isElastic();
        double height = cell().height() + next.height() + (drawers ? gap() : panel());
        joined.remove(at + 1);
        var whole = joined.get(at).given(height);
        joined.set(at, elastic ? whole.rest() : whole);
        return done(what, Column.elastic(joined, at), at);
    }

    /** @param by 1 down, -1 up */
    Deed moved(int by) {
        var what = "Move " + name(at) + (by < 0 ? " up" : " down");
        int to = at + by;
        if (to < 0 || to == cells.size()) {
            return Deed.impossible(what, "It is the " + (by < 0 ? "uppermost" : "lowest") + " of its bay.");
        }
        var other = cells.get(to);
        if (cell().source() == other.source() && cell().share() == Cell.Share.EQUAL) {
            return Deed.impossible(what, "The one that it would change places with is just like it.");
        }
        boolean inSeries = isSeries(cell()) || isSeries(other);
        var moved = new ArrayList<>(inSeries ? bay.column().settled(Math.min(at, to), Math.max(at, to)) : cells);
        moved.add(to, moved.remove(at));
        boolean drawers = cell().isDrawer() && other.isDrawer();
        return done(what, drawers ? moved : Column.elastic(moved, Math.max(at, to)), to);
    }

    private static boolean isSeries(Cell cell) {
        return cell.share() == Cell.Share.GRADUATED || cell.share() == Cell.Share.FILLED;
    }

    /** @param as what it is to be: new cells in its place */
    Deed made(String as, List<Cell> in) {
        var made = new ArrayList<>(cells);
        made.remove(at);
        made.addAll(at, in);
        return done("Make " + name(at) + " " + as, Column.elastic(made, at), at);
    }

    private Deed done(String what, List<Cell> after, int then) {
        var contents = bay.column().contents();
        var changed = Differences.written(
                text, bay.pointer() + "/contents", contents, bay.column().with(after));
        return Deed.of(what, changed, FrontModel.key(bay, then));
    }

    private double gap() {
        return design.drawers().gap();
    }

    private double panel() {
        return design.carcass().sheet().material().thickness();
    }
}
