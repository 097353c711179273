package org.standwright.sheet;

/**
 * One straight saw cut from edge to edge of the panel it divides.
 *
 * @param kerf the strip that the blade turns to dust
 */
public record Cut(int number, Direction direction, Area kerf) {
    public enum Direction {
        /** Along the sheet's length. */
        RIP,
        /** Across the sheet's length. */
        CROSSCUT
    }
}
