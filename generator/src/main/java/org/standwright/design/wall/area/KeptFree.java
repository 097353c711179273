package org.standwright.design.wall.area;

import org.standwright.design.wall.Obstacle;
import org.standwright.geom.Interval;
import org.standwright.geom.Rect;

/**
 * How much an obstacle keeps free around itself: its casing and a margin, and by its kind more than that.
 *
 * <p>In front of an electrical panel lies a working space that nothing may be stored in: 762 mm wide, or as wide as the
 * panel if that is wider, from the floor to 1981 mm, or to the panel's top if that is higher (NEC 110.26(A) and IRC E3405,
 * as quoted in references 4). Assumed here: it is centred on the panel, though the code lets it lie to either side, and
 * only moved sideways where the wall ends; above it the wall may be used; how deep it is before the wall is no matter of
 * the wall. This is no legal advice.
 */
final class KeptFree {
    /** Below an outlet, for plugs and cords, mm (common practice, no source). */
    private static final double CORDS = 150;

    private static final double WORKING_WIDTH = 762;
    private static final double WORKING_HEIGHT = 1981;

    private KeptFree() {}

    /**
     * @param itself the obstacle, within the wall
     * @param bounds the box around the wall, which it is clipped to
     * @param clear part of the wall that the strips of its neighbours leave free, for a panel's working space
     */
    static Rect around(Obstacle obstacle, Rect itself, Rect bounds, Interval clear) {
        var kept = grown(
                itself,
                obstacle.casing() + obstacle.margin().orElse(obstacle.kind().margin()));
        return clipped(
                switch (obstacle.kind()) {
                    case DOOR, BENCH, CABINET, STAND -> downTo(bounds.y0(), kept);
                    case OUTLET -> downTo(itself.y0() - CORDS, kept);
                    case ELECTRICAL_PANEL -> around(kept, workingSpace(itself, bounds, clear));
                    case WINDOW, SWITCH, PIPE, BEAM, RADIATOR -> kept;
                },
                bounds);
    }

    private static Rect workingSpace(Rect panel, Rect bounds, Interval clear) {
        double width = Math.min(Math.max(WORKING_WIDTH, panel.width()), clear.length());
        double centred = (panel.x0() + panel.x1() - width) / 2;
        double from = Math.max(clear.from(), Math.min(centred, clear.to() - width));
        return new Rect(from, bounds.y0(), from + width, Math.max(WORKING_HEIGHT, panel.y1()));
    }

    private static Rect grown(Rect rect, double by) {
        return new Rect(rect.x0() - by, rect.y0() - by, rect.x1() + by, rect.y1() + by);
    }

    private static Rect downTo(double low, Rect rect) {
        return new Rect(rect.x0(), Math.min(low, rect.y0()), rect.x1(), rect.y1());
    }

    private static Rect around(Rect a, Rect b) {
        return new Rect(
                Math.min(a.x0(), b.x0()), Math.min(a.y0(), b.y0()), Math.max(a.x1(), b.x1()), Math.max(a.y1(), b.y1()));
    }

    private static Rect clipped(Rect rect, Rect to) {
        return new Rect(
                Math.max(rect.x0(), to.x0()),
                Math.max(rect.y0(), to.y0()),
                Math.min(rect.x1(), to.x1()),
                Math.min(rect.y1(), to.y1()));
    }
}
