package org.standwright.design.wall.place;

import java.util.Optional;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;

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

    /** Left edges that it forbids a holder at such a height, its ends excluded. */
    Optional<Interval> blocked(ToHang holder) {
        var box = holder.box();
        return taken(holder.depth())
                .map(taken -> new Interval(
                        taken.from() - box.max().x(), taken.to() - box.min().x()));
    }

    /** How much of the wall's length it takes from what reaches out so far. */
    Optional<Interval> taken(double depth) {
        return footprint.shadow(depth).map(shadow -> new Interval(shadow.from() - beside, shadow.to() + beside));
    }
}
