package org.standwright.drawing;

/** A straight line. */
public record Line(Point from, Point to, Pen pen) implements Shape {
    public static Line between(double x0, double y0, double x1, double y1, Pen pen) {
        return new Line(new Point(x0, y0), new Point(x1, y1), pen);
    }

    @Override
    public <R> R accept(ShapeVisitor<R> visitor) {
        return visitor.line(this);
    }
}
