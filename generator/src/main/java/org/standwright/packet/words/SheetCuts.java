package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.PlannedSheet;

/** What each cut of one board leaves on the bench, found by sawing it in order. */
final class SheetCuts {
    private final int number;
    private final PlannedSheet sheet;
    private final Set<String> later;
    private final List<Panel> panels = new ArrayList<>();

    /** @param waits whether it is left whole until the second stage */
    private record Panel(Area area, boolean waits) {}

    private SheetCuts(int number, PlannedSheet sheet, Set<String> later, Area whole) {
        this.number = number;
        this.sheet = sheet;
        this.later = later;
        panels.add(panel(whole, false));
    }

    /**
     * @param number of the sheet
     * @param later labels of the pieces of the second stage
     */
    static List<SawnCut> of(int number, PlannedSheet sheet, Area trimmed, Set<String> later) {
        boolean trims = sheet.cuts().stream().anyMatch(cut -> cut.purpose() == Cut.Purpose.TRIM);
        var cuts = new SheetCuts(number, sheet, later, trims ? sheet.board() : trimmed);
        return sheet.cuts().stream().flatMap(cut -> cuts.saw(cut).stream()).toList();
    }

    private Optional<SawnCut> saw(Cut cut) {
        var divided =
                panels.stream().filter(panel -> holds(panel.area(), cut.kerf())).findFirst();
        divided.ifPresent(panels::remove);
        return divided.map(panel -> saw(cut, panel));
    }

    private SawnCut saw(Cut cut, Panel panel) {
        var halves = cut.direction() == Cut.Direction.RIP
                ? ripped(panel.area(), cut.kerf())
                : crosscut(panel.area(), cut.kerf());
        halves.forEach(half -> panels.add(panel(half, panel.waits())));
        return new SawnCut(number, cut, halves.stream().flatMap(this::named).toList(), panel.waits());
    }

    /** A panel waits when the one that it came from did, or all of its pieces do. */
    private Panel panel(Area area, boolean waits) {
        var inside = sheet.pieces().stream()
                .filter(piece -> holds(area, piece.area()))
                .toList();
        boolean all = !inside.isEmpty() && inside.stream().allMatch(piece -> later.contains(piece.label()));
        return new Panel(area, waits || all);
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
}
