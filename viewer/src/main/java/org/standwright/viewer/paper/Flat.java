package org.standwright.viewer.paper;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.ShapeVisitor;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;

/** The shapes of a drawing without groups, each with the room that it takes, so that what is out of sight is left out. */
final class Flat implements ShapeVisitor<Void> {
    /**
     * One shape.
     *
     * @param shift how far its group is moved, mm
     */
    record Placed(Shape shape, Point shift, double x0, double y0, double x1, double y1) {
        /** Whether some of it lies in a part of the paper, mm. */
        boolean isWithin(double left, double bottom, double right, double top) {
            return x0 <= right && x1 >= left && y0 <= top && y1 >= bottom;
        }
    }

    private final List<Placed> found;
    private final Point shift;

    private Flat(List<Placed> found, Point shift) {
        this.found = found;
        this.shift = shift;
    }

    static List<Placed> of(List<Shape> shapes) {
        var found = new ArrayList<Placed>();
        var visitor = new Flat(found, new Point(0, 0));
        shapes.forEach(shape -> shape.accept(visitor));
        return List.copyOf(found);
    }

    @Override
    public Void line(Line line) {
        return add(line, List.of(line.from(), line.to()), line.pen().width());
    }

    @Override
    public Void arc(Arc arc) {
        return add(arc, List.of(arc.centre()), arc.radius() + arc.pen().width());
    }

    @Override
    public Void polygon(Polygon polygon) {
        return add(
                polygon, polygon.points(), polygon.pen().map(pen -> pen.width()).orElse(0.0));
    }

    @Override
    public Void text(Text text) {
        var box = TextMeasure.shipped().box(text);
        return add(text, List.of(new Point(box.x0(), box.y0()), new Point(box.x1(), box.y1())), text.size());
    }

    @Override
    public Void group(Group group) {
        var inner = new Flat(found, shift.plus(group.shift()));
        group.shapes().forEach(shape -> shape.accept(inner));
        return null;
    }

    private Void add(Shape shape, List<Point> points, double around) {
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        for (var point : points) {
            x0 = Math.min(x0, point.x());
            y0 = Math.min(y0, point.y());
            x1 = Math.max(x1, point.x());
            y1 = Math.max(y1, point.y());
        }
        found.add(new Placed(
                shape,
                shift,
                x0 + shift.x() - around,
                y0 + shift.y() - around,
                x1 + shift.x() + around,
                y1 + shift.y() + around));
        return null;
    }
}
