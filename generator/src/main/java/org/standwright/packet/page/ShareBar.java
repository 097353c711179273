package org.standwright.packet.page;

import java.util.List;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.geom.Rect;

/** A bar that shows how much of something is used, with a line across it where all of it is. */
final class ShareBar {
    /** mm. */
    static final double WIDTH = 25;

    private static final double WHOLE = 20;
    private static final double HEIGHT = 2;
    /** How far the line stands over the bar, mm. */
    private static final double OVER = 0.6;

    private ShareBar() {}

    /** With its lower left corner at a place; what is beyond the whole is dark. */
    static List<Shape> shapes(double share, double x, double y) {
        double end = Math.max(0.2, Math.min(WIDTH, share * WHOLE));
        var fill = share > 1 ? Fill.GRAY : Fill.LIGHT;
        return List.of(
                Line.between(x, y, x + WHOLE, y, Pen.THIN),
                Polygon.of(new Rect(x, y, x + end, y + HEIGHT), share > 1 ? Pen.OUTLINE : Pen.DIMENSION, fill),
                Line.between(x + WHOLE, y - OVER, x + WHOLE, y + HEIGHT + OVER, Pen.OUTLINE));
    }
}
