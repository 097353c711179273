package org.standwright.drawing;

import java.util.List;
import org.standwright.geom.Rect;

/** Words in the middle of an area. */
final class Caption {
    private static final double CLEAR = 0.6;

    private Caption() {}

    /** One level line, or nothing where it has no room. */
    static List<Shape> middle(String words, Rect area, double size, TextMeasure measure) {
        boolean fits = measure.width(words, size, Weight.REGULAR) + 2 * CLEAR <= area.width()
                && measure.above(size) + measure.below(size) + 2 * CLEAR <= area.height();
        double x = (area.x0() + area.x1()) / 2;
        double y = (area.y0() + area.y1() - measure.above(size)) / 2;
        return fits ? List.of(Text.level(words, new Point(x, y), size, Text.Anchor.MIDDLE)) : List.of();
    }
}
