package org.standwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import org.standwright.design.kit.Keep;

/** Judges one board: pieces inside the trim and a kerf apart, divisible edge to edge, and the cuts as listed. */
final class SheetVerifier {
    private final Area board;
    private final Area trimmed;
    private final int kerf;
    private final Keep keep;
    private final List<String> faults = new ArrayList<>();

    SheetVerifier(Area board, Area trimmed, int kerf, Keep keep) {
        this.board = board;
        this.trimmed = trimmed;
        this.keep = keep;
        this.kerf = kerf;
    }

    List<String> faults(PlannedSheet sheet) {
        checkInside(sheet);
        checkApart(sheet.pieces());
        if (!divisible(sheet.pieces().stream().map(PlacedPiece::area).toList())) {
            faults.add("no order of edge-to-edge cuts frees its pieces.");
        }
        var replay = new CutReplay(trimmed, kerf, keep);
        faults.addAll(replay.faults(sheet));
        checkBalance(sheet, replay);
        return faults;
    }

    private void checkInside(PlannedSheet sheet) {
        if (sheet.pieces().isEmpty()) {
            faults.add("nothing is cut from it.");
        }
        for (var piece : sheet.pieces()) {
            var area = piece.area();
            boolean inside = area.x() >= trimmed.x()
                    && area.y() >= trimmed.y()
                    && area.x() + area.length() <= trimmed.x() + trimmed.length()
                    && area.y() + area.width() <= trimmed.y() + trimmed.width();
            if (!inside) {
                faults.add("piece '" + piece.label() + "' at " + area + " reaches into the trim.");
            }
        }
    }

    private void checkApart(List<PlacedPiece> pieces) {
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = 0; j < i; j++) {
                var a = pieces.get(i);
                var b = pieces.get(j);
                if (!apart(a.area(), b.area())) {
                    faults.add("pieces '" + b.label() + "' at " + b.area() + " and '" + a.label() + "' at " + a.area()
                            + " leave no kerf.");
                }
            }
        }
    }

    private boolean apart(Area a, Area b) {
        return a.x() + a.length() + kerf <= b.x()
                || b.x() + b.length() + kerf <= a.x()
                || a.y() + a.width() + kerf <= b.y()
                || b.y() + b.width() + kerf <= a.y();
    }

    /** Whether a gap of a kerf runs right through, and so on in both halves. */
    private boolean divisible(List<Area> pieces) {
        if (pieces.size() < 2) {
            return true;
        }
        return divisible(pieces, Area::x, Area::length) || divisible(pieces, Area::y, Area::width);
    }

    private boolean divisible(List<Area> pieces, ToIntFunction<Area> start, ToIntFunction<Area> extent) {
        var sorted = pieces.stream().sorted(Comparator.comparingInt(start)).toList();
        int end = Integer.MIN_VALUE;
        for (int i = 0; i < sorted.size(); i++) {
            var next = sorted.get(i);
            if (i > 0 && end + kerf <= start.applyAsInt(next)) {
                // any gap will do: what can be divided stays so when it is cut elsewhere first
                return divisible(sorted.subList(0, i)) && divisible(sorted.subList(i, sorted.size()));
            }
            end = Math.max(end, start.applyAsInt(next) + extent.applyAsInt(next));
        }
        return false;
    }

    private void checkBalance(PlannedSheet sheet, CutReplay replay) {
        long pieces =
                sheet.pieces().stream().mapToLong(piece -> piece.area().size()).sum();
        long offcuts = sheet.offcuts().stream().mapToLong(Area::size).sum();
        long trim = board.size() - trimmed.size();
        long accounted = pieces + offcuts + replay.sawdust() + replay.waste() + trim;
        if (accounted != board.size()) {
            faults.add(
                    "pieces, offcuts, sawdust, waste and trim are " + accounted + " of " + board.size() + " units².");
        }
    }
}
