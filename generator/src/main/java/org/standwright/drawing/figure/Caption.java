package org.standwright.drawing.figure;

import java.util.List;
import java.util.stream.DoubleStream;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/** Words in the middle of an area. */
final class Caption {
    private static final double CLEAR = 0.6;
    /** Above and below letters, which have white of their own there. */
    private static final double CLEAR_ABOVE = 0.35;

    private Caption() {}

    /** One level line, of {@code size} or smaller, or nothing where none has room. */
    static List<Shape> middle(String words, Rect area, double size, TextMeasure measure) {
        return DoubleStream.of(size, Letters.DIMENSION, Letters.SMALLEST)
                .filter(letters -> letters <= size && fits(words, area, letters, measure))
                .mapToObj(letters -> centred(words, area, letters, measure))
                .limit(1)
                .toList();
    }

    private static boolean fits(String words, Rect area, double size, TextMeasure measure) {
        return measure.width(words, size, Weight.REGULAR) + 2 * CLEAR <= area.width()
                && measure.above(size) + 2 * CLEAR_ABOVE <= area.height();
    }

    private static Shape centred(String words, Rect area, double size, TextMeasure measure) {
        double x = (area.x0() + area.x1()) / 2;
        double y = (area.y0() + area.y1() - measure.above(size)) / 2;
        return Text.level(words, new Point(x, y), size, Text.Anchor.MIDDLE);
    }
}
