package org.standwright.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;

/** Judges one board: pieces inside the trim and a kerf apart, divisible edge to edge, and the cuts as listed. */
final class SheetVerifier {
    private final PlannedSheet sheet;
    private final Saw saw;
    private final Keep keep;
    private final int kerf;
    private final List<String> faults = new ArrayList<>();

    private SheetVerifier(PlannedSheet sheet, Saw saw, Keep keep) {
        this.sheet = sheet;
        this.saw = saw;
        this.keep = keep;
        this.kerf = SheetUnit.up(saw.kerf());
    }

    static List<String> faults(PlannedSheet sheet, Saw saw, Keep keep) {
        var verifier = new SheetVerifier(sheet, saw, keep);
        verifier.checkInside();
        verifier.checkApart();
        if (!verifier.divisible(sheet.pieces().stream().map(PlacedPiece::area).toList())) {
            verifier.faults.add("no order of edge-to-edge cuts frees its pieces.");
        }
        var replay = CutReplay.of(sheet);
        verifier.faults.addAll(replay.faults());
        verifier.faults.addAll(CutVerifier.faults(sheet, replay, saw));
        verifier.checkRemains(replay);
        return verifier.faults;
    }

    private void checkInside() {
        if (sheet.pieces().isEmpty()) {
            faults.add("nothing is cut from it.");
        }
        var trimmed = sheet.trimmed(saw);
        for (var piece : sheet.pieces()) {
            if (!trimmed.holds(piece.area())) {
                faults.add("piece '" + piece.label() + "' at " + piece.area() + " reaches into the trim.");
            }
        }
    }

    /** Only pieces whose ends overlap in x can be too near each other. */
    private void checkApart() {
        var sorted = sheet.pieces().stream()
                .sorted(Comparator.comparingInt(piece -> piece.area().x()))
                .toList();
        var near = new ArrayList<PlacedPiece>();
        for (var piece : sorted) {
            near.removeIf(other -> other.area().endX() + kerf <= piece.area().x());
            near.stream()
                    .filter(other -> !apart(other.area(), piece.area()))
                    .forEach(other -> faults.add("pieces '" + other.label() + "' at " + other.area() + " and '"
                            + piece.label() + "' at " + piece.area() + " leave no kerf."));
            near.add(piece);
        }
    }

    private boolean apart(Area a, Area b) {
        return a.endY() + kerf <= b.y() || b.endY() + kerf <= a.y();
    }

    /** Whether a gap of a kerf runs right through, and so on in both halves. */
    private boolean divisible(List<Area> pieces) {
        return pieces.size() < 2 || divisible(pieces, Area::x, Area::endX) || divisible(pieces, Area::y, Area::endY);
    }

    private boolean divisible(List<Area> pieces, ToIntFunction<Area> start, ToIntFunction<Area> finish) {
        var sorted = pieces.stream().sorted(Comparator.comparingInt(start)).toList();
        int end = Integer.MIN_VALUE;
        for (int i = 0; i < sorted.size(); i++) {
            var next = sorted.get(i);
            if (i > 0 && end + kerf <= start.applyAsInt(next)) {
                // any gap will do: what can be divided stays so when it is cut elsewhere first
                return divisible(sorted.subList(0, i)) && divisible(sorted.subList(i, sorted.size()));
            }
            end = Math.max(end, finish.applyAsInt(next));
        }
        return false;
    }

    /** What lies on the bench in the end, and its area to the last unit. */
    private void checkRemains(CutReplay replay) {
        var remains = new ArrayList<>(replay.remains().stream().map(Panel::area).toList());
        long accounted =
                sheet.cuts().stream().mapToLong(cut -> cut.kerf().size()).sum();
        for (var piece : sheet.pieces()) {
            accounted += taken(remains, "piece '" + piece.label() + "'", piece.area());
        }
        for (var offcut : sheet.offcuts()) {
            accounted += taken(remains, "offcut", offcut);
            if (!isWorthKeeping(offcut)) {
                faults.add("offcut at " + offcut + " is smaller than what is kept.");
            }
        }
        var edges = replay.sawn().stream()
                .filter(sawn -> sawn.cut().purpose() != Cut.Purpose.DIVIDE)
                .map(sawn -> sawn.fallsOff().area())
                .collect(Collectors.toSet());
        for (var rest : remains) {
            accounted += rest.size();
            if (isWorthKeeping(rest) && !edges.contains(rest)) {
                faults.add("the cuts leave " + rest + ", which is neither piece nor offcut.");
            }
        }
        if (accounted != sheet.board().size()) {
            faults.add("pieces, offcuts, sawdust and waste are " + accounted + " of "
                    + sheet.board().size() + " units².");
        }
    }

    private long taken(List<Area> remains, String what, Area area) {
        if (!remains.remove(area)) {
            faults.add(what + " at " + area + " is not what the cuts leave.");
        }
        return area.size();
    }

    private boolean isWorthKeeping(Area rest) {
        return keep.isWorth(SheetUnit.mm(rest.length()), SheetUnit.mm(rest.width()));
    }
}
