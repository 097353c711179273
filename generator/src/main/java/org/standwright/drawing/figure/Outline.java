package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** The outline of a rectangle whose corners may be round. */
final class Outline {
    private Outline() {}

    /** @param radius of the corners, mm on paper, at most half of either side */
    static List<Shape> of(Rect rect, double radius) {
        if (!Grid.less(0, radius)) {
            return List.of(Polygon.of(rect, Pen.OUTLINE, Fill.NONE));
        }
        double x0 = rect.x0() + radius;
        double y0 = rect.y0() + radius;
        double x1 = rect.x1() - radius;
        double y1 = rect.y1() - radius;
        var shapes = new ArrayList<Shape>();
        shapes.add(Line.between(x0, rect.y0(), x1, rect.y0(), Pen.OUTLINE));
        shapes.add(Line.between(rect.x1(), y0, rect.x1(), y1, Pen.OUTLINE));
        shapes.add(Line.between(x0, rect.y1(), x1, rect.y1(), Pen.OUTLINE));
        shapes.add(Line.between(rect.x0(), y0, rect.x0(), y1, Pen.OUTLINE));
        shapes.add(new Arc(new Point(x1, y1), radius, 0, 90, Pen.OUTLINE));
        shapes.add(new Arc(new Point(x0, y1), radius, 90, 90, Pen.OUTLINE));
        shapes.add(new Arc(new Point(x0, y0), radius, 180, 90, Pen.OUTLINE));
        shapes.add(new Arc(new Point(x1, y0), radius, 270, 90, Pen.OUTLINE));
        return shapes;
    }
}
