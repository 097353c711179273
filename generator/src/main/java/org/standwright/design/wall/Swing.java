package org.standwright.design.wall;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * How a door opens into the room; one that opens the other way needs no swing.
 *
 * @param hinges at which of its sides, seen from inside the room
 * @param angle how far it opens from shut, degrees; beyond 90 it comes to lie before the wall beside it
 * @param thickness of the leaf with its handle, mm
 */
public record Swing(Side hinges, double angle, double thickness) {
    /** Left or right, seen by a person who faces the wall. */
    public enum Side {
        @JsonProperty("left")
        LEFT,
        @JsonProperty("right")
        RIGHT
    }
}
