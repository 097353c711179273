package org.standwright.design.wall.built;

import org.standwright.geom.Interval;
import org.standwright.geom.Rect;

/**
 * A holder where it hangs.
 *
 * @param wall number of the wall
 * @param row number of the row
 * @param rowHeight height of the row above the floor, mm
 * @param x left edge, from the wall's left end, mm
 * @param byHand whether its maker chose the place
 */
public record HungHolder(
        MadeHolder made, int wall, int row, double rowHeight, double x, Backing backing, boolean byHand) {
    public String name() {
        return made.holder().name();
    }

    /** Along the wall, mm. */
    public Interval along() {
        return new Interval(x, x + made.box().size().x());
    }

    /** What it and its things cover of the wall, seen from the room, x and height above the floor, mm. */
    public Rect area() {
        var box = made.box();
        return new Rect(
                x + box.min().x(),
                rowHeight + box.min().z(),
                x + box.max().x(),
                rowHeight + box.max().z());
    }
}
