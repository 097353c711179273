package org.standwright.sheet;

import java.util.List;

/**
 * What leaves a sheet at its place: one piece of a cut line, or a blank that becomes several pieces afterwards.
 *
 * @param label of the cut line; of a blank those of its pieces, 'C + C + D'
 * @param area as laid on the sheet: when turned, its length lies across the sheet
 * @param parting how it becomes pieces
 * @param holds the pieces of a blank at the places that they are cut from; none for a piece
 */
public record PlacedPiece(String label, Area area, boolean turned, Parting parting, List<PlacedPiece> holds) {
    /** How what leaves the sheet becomes pieces. */
    public enum Parting {
        /** It is one piece. */
        NONE,
        /** It is a blank, held whole until its pieces are separated. */
        LATER,
        /** By one rip with the blade tilted, which gives two strips whose long faces overlap. */
        BEVEL
    }

    public PlacedPiece {
        holds = List.copyOf(holds);
        if (holds.isEmpty() != (parting == Parting.NONE)) {
            throw new IllegalArgumentException("'" + label + "' holds " + holds.size() + " pieces, but its parting is "
                    + parting + "; a blank holds pieces, and a piece none.");
        }
    }

    /** One piece of a cut line. */
    public PlacedPiece(String label, Area area, boolean turned) {
        this(label, area, turned, Parting.NONE, List.of());
    }

    /** The pieces of cut lines in it: itself, or those of a blank. */
    public List<PlacedPiece> parts() {
        return parting == Parting.NONE ? List.of(this) : holds;
    }

    /** Area of the parts in it, units²; the strips of a bevel share theirs. */
    public long partArea() {
        return parting == Parting.LATER
                ? holds.stream().mapToLong(part -> part.area().size()).sum()
                : area.size();
    }

    public PlacedPiece moved(int alongX, int alongY) {
        var moved = holds.stream().map(part -> part.moved(alongX, alongY)).toList();
        return new PlacedPiece(label, area.moved(alongX, alongY), turned, parting, moved);
    }
}
