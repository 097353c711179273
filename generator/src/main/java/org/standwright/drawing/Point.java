package org.standwright.drawing;

/** A place on paper, mm. */
public record Point(double x, double y) {
    public Point plus(Point other) {
        return new Point(x + other.x, y + other.y);
    }
}
