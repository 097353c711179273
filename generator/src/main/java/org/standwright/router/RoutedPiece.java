package org.standwright.router;

import org.standwright.geom.Outline;
import org.standwright.geom.Require;
import org.standwright.part.Part;

/**
 * One part at its place on a board.
 *
 * @param label of its line in the cut list
 */
public record RoutedPiece(String label, Part part, Lie lie) {
    public RoutedPiece {
        Require.named("piece on a router's sheet", label);
    }

    /** What it is cut to, on the board. */
    public Outline outline() {
        return CutOutline.of(part).moved(lie);
    }
}
