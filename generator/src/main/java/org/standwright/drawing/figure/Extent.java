package org.standwright.drawing.figure;

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
import org.standwright.geom.Rect;

/** Grows a box around shapes. Widths of pens are left out. */
final class Extent implements ShapeVisitor<Void> {
    private final TextMeasure measure;
    private double x0 = Double.POSITIVE_INFINITY;
    private double y0 = Double.POSITIVE_INFINITY;
    private double x1 = Double.NEGATIVE_INFINITY;
    private double y1 = Double.NEGATIVE_INFINITY;
    private Point origin = new Point(0, 0);

    private Extent(TextMeasure measure) {
        this.measure = measure;
    }

    /** The box around shapes that cover an area, of which there is at least one. */
    static Rect of(List<Shape> shapes, TextMeasure measure) {
        var extent = new Extent(measure);
        shapes.forEach(shape -> shape.accept(extent));
        return new Rect(extent.x0, extent.y0, extent.x1, extent.y1);
    }

    @Override
    public Void line(Line line) {
        reach(line.from());
        reach(line.to());
        return null;
    }

    @Override
    public Void arc(Arc arc) {
        double r = arc.radius();
        reach(arc.centre().plus(new Point(-r, -r)));
        reach(arc.centre().plus(new Point(r, r)));
        return null;
    }

    @Override
    public Void polygon(Polygon polygon) {
        polygon.points().forEach(this::reach);
        return null;
    }

    @Override
    public Void text(Text text) {
        var box = measure.box(text);
        reach(new Point(box.x0(), box.y0()));
        reach(new Point(box.x1(), box.y1()));
        return null;
    }

    @Override
    public Void group(Group group) {
        var outer = origin;
        origin = outer.plus(group.shift());
        group.shapes().forEach(shape -> shape.accept(this));
        origin = outer;
        return null;
    }

    private void reach(Point point) {
        var at = point.plus(origin);
        x0 = Math.min(x0, at.x());
        y0 = Math.min(y0, at.y());
        x1 = Math.max(x1, at.x());
        y1 = Math.max(y1, at.y());
    }
}
