package org.standwright.sheet.bar;

import java.util.List;
import org.standwright.sheet.Proof;

/**
 * Which pieces come from which bar.
 *
 * @param kerf units
 * @param proof how near it is to the least that any plan costs
 */
public record BarPlan(List<CutBar> bars, int kerf, Proof proof) {
    public BarPlan {
        bars = List.copyOf(bars);
    }

    /** Length of all pieces over that of all bars, 0 to 1. */
    public double yield(List<BarPiece> pieces) {
        double used = pieces.stream()
                .mapToDouble(piece -> (double) piece.length() * piece.count())
                .sum();
        return used / bars.stream().mapToDouble(cut -> cut.bar().length()).sum();
    }
}
