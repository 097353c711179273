package org.standwright.drawing;

import java.util.List;
import java.util.Optional;
import org.standwright.geom.Rect;

/**
 * A closed outline.
 *
 * @param points at least three, the first not repeated
 * @param pen of its outline; empty for a plain area
 */
public record Polygon(List<Point> points, Optional<Pen> pen, Fill fill) implements Shape {
    public Polygon {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("polygon has " + points.size() + " points; it takes three or more.");
        }
    }

    /** The outline of a rectangle over an area. */
    public static Polygon of(Rect rect, Pen pen, Fill fill) {
        return new Polygon(corners(rect), Optional.of(pen), fill);
    }

    /** A rectangular area without an outline. */
    public static Polygon area(Rect rect, Fill fill) {
        return new Polygon(corners(rect), Optional.empty(), fill);
    }

    private static List<Point> corners(Rect rect) {
        return List.of(
                new Point(rect.x0(), rect.y0()),
                new Point(rect.x1(), rect.y0()),
                new Point(rect.x1(), rect.y1()),
                new Point(rect.x0(), rect.y1()));
    }

    @Override
    public <R> R accept(ShapeVisitor<R> visitor) {
        return visitor.polygon(this);
    }
}
