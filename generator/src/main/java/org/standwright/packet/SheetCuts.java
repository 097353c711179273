package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;
import org.standwright.sheet.SheetUnit;

/** The cuts of one board, each with what it leaves on the bench, found by sawing the trimmed board in order. */
final class SheetCuts {
    /**
     * One cut.
     *
     * @param fromCorner near side of the kerf from the board's lower left corner, mm
     * @param fromEdge the same from the near edge of the panel that is sawn: what a fence is set to, mm
     * @param frees labels of finished pieces, and 'offcut'
     * @param waits whether all that it parts are pieces that wait
     */
    record Row(Cut cut, double fromCorner, double fromEdge, List<String> frees, boolean waits) {}

    private final PlannedSheet sheet;
    private final Set<String> waiting;
    private final List<Area> panels = new ArrayList<>();

    private SheetCuts(Area trimmed, PlannedSheet sheet, Set<String> waiting) {
        this.sheet = sheet;
        this.waiting = waiting;
        panels.add(trimmed);
    }

    /** @param waiting labels of the pieces of the second stage */
    static List<Row> of(Area trimmed, PlannedSheet sheet, Set<String> waiting) {
        var cuts = new SheetCuts(trimmed, sheet, waiting);
        return sheet.cuts().stream().flatMap(cut -> cuts.saw(cut).stream()).toList();
    }

    private Optional<Row> saw(Cut cut) {
        var divided = panels.stream().filter(panel -> holds(panel, cut.kerf())).findFirst();
        divided.ifPresent(panels::remove);
        return divided.map(panel -> row(cut, panel));
    }

    private Row row(Cut cut, Area panel) {
        boolean rip = cut.direction() == Cut.Direction.RIP;
        int at = rip ? cut.kerf().y() : cut.kerf().x();
        int off = at - (rip ? panel.y() : panel.x());
        var halves = rip ? ripped(panel, cut.kerf()) : crosscut(panel, cut.kerf());
        panels.addAll(halves);
        var frees = halves.stream().flatMap(this::named).toList();
        boolean waits = sheet.pieces().stream()
                .filter(piece -> holds(panel, piece.area()))
                .allMatch(piece -> waiting.contains(piece.label()));
        return new Row(cut, SheetUnit.mm(at), SheetUnit.mm(off), frees, waits);
    }

    private Stream<String> named(Area panel) {
        var pieces = sheet.pieces().stream()
                .filter(piece -> piece.area().equals(panel))
                .map(PlacedPiece::label);
        return Stream.concat(pieces, sheet.offcuts().contains(panel) ? Stream.of("offcut") : Stream.empty());
    }

    private static List<Area> ripped(Area panel, Area kerf) {
        int after = kerf.y() + kerf.width();
        return List.of(
                new Area(panel.x(), panel.y(), panel.length(), kerf.y() - panel.y()),
                new Area(panel.x(), after, panel.length(), panel.y() + panel.width() - after));
    }

    private static List<Area> crosscut(Area panel, Area kerf) {
        int after = kerf.x() + kerf.length();
        return List.of(
                new Area(panel.x(), panel.y(), kerf.x() - panel.x(), panel.width()),
                new Area(after, panel.y(), panel.x() + panel.length() - after, panel.width()));
    }

    private static boolean holds(Area panel, Area inside) {
        return inside.x() >= panel.x()
                && inside.y() >= panel.y()
                && inside.x() + inside.length() <= panel.x() + panel.length()
                && inside.y() + inside.width() <= panel.y() + panel.width();
    }

    /** Labels of the pieces on a board that wait, each once. */
    static List<String> waiting(PlannedSheet sheet, Set<String> waiting) {
        return sheet.pieces().stream()
                .map(PlacedPiece::label)
                .filter(waiting::contains)
                .distinct()
                .sorted()
                .toList();
    }
}
