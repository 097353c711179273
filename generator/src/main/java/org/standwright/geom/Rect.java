package org.standwright.geom;

/** A rectangle along the axes of a plane, from (x0, y0) to (x1, y1), mm. */
public record Rect(double x0, double y0, double x1, double y1) {
    public Rect {
        if (!(x1 - x0 > Grid.STEP && y1 - y0 > Grid.STEP)) {
            throw new IllegalArgumentException("rectangle from (" + x0 + ", " + y0 + ") to (" + x1 + ", " + y1
                    + ") is empty; its second corner must lie beyond the first.");
        }
    }

    public double width() {
        return x1 - x0;
    }

    public double height() {
        return y1 - y0;
    }

    public double area() {
        return width() * height();
    }
}
