package org.standwright.design.top;

import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/**
 * A part of a plane where something else already is.
 *
 * @param what it is, as a message names it: 'the partition', 'machine bolt 2'
 */
record Taken(String what, Rect area) {
    boolean meets(Rect other) {
        return Grid.less(Math.max(area.x0(), other.x0()), Math.min(area.x1(), other.x1()))
                && Grid.less(Math.max(area.y0(), other.y0()), Math.min(area.y1(), other.y1()));
    }

    /** The same with room around it. */
    Taken with(double room) {
        return new Taken(what, grown(area, room));
    }

    static Rect grown(Rect area, double room) {
        return new Rect(area.x0() - room, area.y0() - room, area.x1() + room, area.y1() + room);
    }

    static Rect around(double x, double y, double half) {
        return new Rect(x - half, y - half, x + half, y + half);
    }

    static boolean within(Rect outer, Rect inner) {
        return !(Grid.less(inner.x0(), outer.x0())
                || Grid.less(inner.y0(), outer.y0())
                || Grid.less(outer.x1(), inner.x1())
                || Grid.less(outer.y1(), inner.y1()));
    }
}
