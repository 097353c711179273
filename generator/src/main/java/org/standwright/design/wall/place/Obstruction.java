package org.standwright.design.wall.place;

import org.standwright.geom.Grid;

/**
 * What a holder on one wall must not meet, hung or lifted off.
 *
 * @param what words for a message that goes on with 'is in the way'
 * @param low above the floor, mm
 * @param high above the floor, mm
 * @param beside how far a holder stays away from it sideways, mm
 */
record Obstruction(String what, double low, double high, Footprint footprint, double beside) {
    /** Whether anything between these heights can meet it. */
    boolean isBetween(double from, double to) {
        return Grid.less(low, to) && Grid.less(from, high);
    }
}
