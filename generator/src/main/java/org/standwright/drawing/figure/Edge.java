package org.standwright.drawing.figure;

import java.util.List;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Shape;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/**
 * One side of a rectangle along the axes.
 *
 * @param at the coordinate that all its points share: y of a level edge, x of an upright one
 */
record Edge(boolean level, double at, double from, double to) {
    static List<Edge> of(Rect rect) {
        return List.of(
                new Edge(true, rect.y0(), rect.x0(), rect.x1()),
                new Edge(true, rect.y1(), rect.x0(), rect.x1()),
                new Edge(false, rect.x0(), rect.y0(), rect.y1()),
                new Edge(false, rect.x1(), rect.y0(), rect.y1()));
    }

    /** Whether all of this edge lies on the other. */
    boolean liesOn(Edge other) {
        return level == other.level
                && Grid.same(at, other.at)
                && !Grid.less(from, other.from)
                && !Grid.less(other.to, to);
    }

    /** Whether its middle lies inside the rectangle, not on its sides. */
    boolean isUnder(Rect rect) {
        double middle = (from + to) / 2;
        double x = level ? middle : at;
        double y = level ? at : middle;
        return Grid.less(rect.x0(), x) && Grid.less(x, rect.x1()) && Grid.less(rect.y0(), y) && Grid.less(y, rect.y1());
    }

    Shape drawn(Scale scale, Pen pen) {
        double place = scale.paper(at);
        double start = scale.paper(from);
        double end = scale.paper(to);
        return level ? Line.between(start, place, end, place, pen) : Line.between(place, start, place, end, pen);
    }
}
