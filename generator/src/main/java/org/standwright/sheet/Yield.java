package org.standwright.sheet;

import java.util.HashSet;

/**
 * What becomes of the area of boards, units²; the five add up to it exactly.
 *
 * @param parts pieces of cut lines
 * @param kerf sawdust of all cuts, trim cuts included
 * @param trim what trim cuts take off beside their kerf
 * @param offcuts what remains and is worth keeping
 * @param waste all else: slivers, allowances, what blanks lose when they are separated
 */
public record Yield(long parts, long kerf, long trim, long offcuts, long waste) {
    /** Of no board at all. */
    static final Yield NONE = new Yield(0, 0, 0, 0, 0);

    static Yield of(PlannedSheet sheet) {
        var replay = CutReplay.of(sheet);
        long parts = sheet.pieces().stream().mapToLong(PlacedPiece::partArea).sum();
        long offcuts = sheet.offcuts().stream().mapToLong(Area::size).sum();
        long kerf = sheet.cuts().stream().mapToLong(cut -> cut.kerf().size()).sum();
        var kept = new HashSet<>(sheet.offcuts());
        long trim = replay.sawn().stream()
                .filter(sawn -> sawn.cut().purpose() == Cut.Purpose.TRIM)
                .map(sawn -> sawn.fallsOff().area())
                .filter(sliver -> !kept.contains(sliver))
                .mapToLong(Area::size)
                .sum();
        return new Yield(parts, kerf, trim, offcuts, sheet.board().size() - parts - offcuts - kerf - trim);
    }

    Yield plus(Yield other) {
        return new Yield(
                parts + other.parts,
                kerf + other.kerf,
                trim + other.trim,
                offcuts + other.offcuts,
                waste + other.waste);
    }

    /** Area of the boards as bought or at hand. */
    public long boards() {
        return parts + kerf + trim + offcuts + waste;
    }

    /** A part of it, 0 to 1 of the boards. */
    public double share(long area) {
        return boards() == 0 ? 0 : (double) area / boards();
    }
}
