package org.standwright.sheet;

import org.standwright.part.Edge;
import org.standwright.part.Grain;
import org.standwright.part.Material;

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

    /** The saw's teeth enter the face on top, a hand-held one's leave it: the face that shows lies where they enter. */
    public boolean goodFaceUp() {
        return tool == Tool.SAW;
    }

    /** Whether it runs across a veneer's grain, so that the line is scored first. */
    public boolean isScored(Material material) {
        return direction == Direction.CROSSCUT && material.grain() == Grain.ALONG_LENGTH;
    }

    /** Length of the cut, units. */
    public int along() {
        return direction == Direction.RIP ? kerf.length() : kerf.width();
    }

    /** Width of the strip that turns to dust; less than the blade's where that runs off the edge, units. */
    public int across() {
        return direction == Direction.RIP ? kerf.width() : kerf.length();
    }
}
