package org.standwright.packet.page;

import java.util.List;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;

/** What stands before an item of a list: a box to tick, and a number where the order counts. */
public record Mark(String number) {
    private static final double TICK_INDENT = 6;
    private static final double STEP_INDENT = 13;

    private static final double BOX = 2.8;

    public static final Mark BOX_ONLY = new Mark("");

    public static Mark step(int number) {
        return new Mark(number + ".");
    }

    /** Where the item's words begin, mm. */
    double indent() {
        return number.isEmpty() ? TICK_INDENT : STEP_INDENT;
    }

    /** A box to tick with its lower left corner at a place. */
    static Shape box(double x, double y) {
        return Polygon.of(new Rect(x, y, x + BOX, y + BOX), Pen.DIMENSION, Fill.NONE);
    }

    List<Shape> shapes(double lineHeight, TextMeasure measure) {
        double baseline = -lineHeight + measure.below(Letters.BODY) + 0.1;
        var box = box(0, baseline - 0.2);
        return number.isEmpty()
                ? List.of(box)
                : List.of(
                        box,
                        Text.level(number, new Point(indent() - 2, baseline), Letters.BODY, Text.Anchor.END)
                                .bold());
    }
}
