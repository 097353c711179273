package org.standwright.sheet;

import org.standwright.part.Edge;

/**
 * One straight saw cut from edge to edge of the panel it divides.
 *
 * @param number its place in the order of all cuts of one material, from 1 on
 * @param kerf the strip that the blade turns to dust
 * @param reference the panel's edge that lies against the fence, or that a hand-held saw's guide is measured from
 * @param setting from that edge to the near side of the kerf, units
 */
public record Cut(int number, Direction direction, Area kerf, Tool tool, Purpose purpose, Edge reference, int setting) {
    public enum Direction {
        /** Along the sheet's length. */
        RIP,
        /** Across the sheet's length. */
        CROSSCUT
    }

    /** What makes the cut. */
    public enum Tool {
        SAW,
        /** The hand-held saw that divides what is too large for the other one. */
        BREAK_DOWN_SAW
    }

    /** What the cut is for. */
    public enum Purpose {
        /** Takes the factory edge off. */
        TRIM,
        /** Divides a panel. */
        DIVIDE,
        /** Takes off the allowance that a break-down cut left. */
        RECUT
    }
}
