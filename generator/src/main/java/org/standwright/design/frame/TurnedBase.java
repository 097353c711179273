package org.standwright.design.frame;

import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Rect;

/**
 * A machine's base turned on the worktop. Its own frame: x and y from the left front corner of the base as the machine is
 * measured; turned frame: from the left front corner of the outline that the turned base fills; mm.
 *
 * @param base as measured
 * @param turn counter-clockwise seen from above: 0, 90, 180 or 270 degrees
 */
public record TurnedBase(Size2 base, int turn) {
    public TurnedBase {
        if (turn % 90 != 0) {
            throw new IllegalArgumentException(
                    "a turn of " + turn + " degrees; a machine is turned by 0, 90, 180 or 270.");
        }
    }

    /** What the turned base fills, mm. */
    public Size2 size() {
        return turn % 180 == 0 ? base : new Size2(base.depth(), base.width());
    }

    /** Where a point of the machine comes to lie. */
    public Point2 apply(Point2 point) {
        return switch (Math.floorMod(turn, 360)) {
            case 90 -> new Point2(base.depth() - point.y(), point.x());
            case 180 -> new Point2(base.width() - point.x(), base.depth() - point.y());
            case 270 -> new Point2(point.y(), base.width() - point.x());
            default -> point;
        };
    }

    /** Where a rectangle of the machine comes to lie. */
    public Rect apply(Rect area) {
        var a = apply(new Point2(area.x0(), area.y0()));
        var b = apply(new Point2(area.x1(), area.y1()));
        return new Rect(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }
}
