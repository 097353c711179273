package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;

/**
 * What is left over of a sheet: hatched, its two sides dimensioned where there is room, else written as one size.
 *
 * @param length in words
 * @param width in words
 */
record OffcutMark(String length, String width, TextMeasure measure) {
    private static final double HATCH = 3.5;
    private static final double CLEAR = 0.5;
    /** Of its letters, mm. */
    private static final double LARGEST = 4.4;
    /** Smallest sides, mm, that leave room for dimension lines beside the word. */
    private static final double ROOM_ALONG = 34;

    private static final double ROOM_ACROSS = 17;
    /** From the edge to a dimension line. */
    private static final double INSET = 4.5;

    List<Shape> on(Rect rect) {
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.area(rect, Fill.WHITE));
        shapes.addAll(hatching(rect));
        boolean roomy = rect.width() >= ROOM_ALONG && rect.height() >= ROOM_ACROSS;
        if (roomy) {
            shapes.addAll(dimensions(rect));
        }
        var size = length + " × " + width;
        var wordings = roomy ? List.of(List.of("offcut")) : List.of(List.of("offcut", size), List.of(size));
        Inscription.largest(wordings, rect, Letters.SMALLEST, LARGEST, measure).ifPresent(lines -> {
            grounds(lines).forEach(shapes::add);
            shapes.addAll(lines);
        });
        return shapes;
    }

    private List<Shape> dimensions(Rect rect) {
        double y = rect.y0() + INSET;
        double x = rect.x0() + INSET;
        double middle = (rect.x0() + rect.x1()) / 2;
        double centre = (rect.y0() + rect.y1()) / 2;
        double down = measure.above(Letters.DIMENSION) / 2;
        var along = Text.level(length, new Point(middle, y - down), Letters.DIMENSION, Text.Anchor.MIDDLE);
        var across = Text.level(width, new Point(x + down, centre), Letters.DIMENSION, Text.Anchor.MIDDLE)
                .upward();
        var shapes = new ArrayList<Shape>(List.of(
                Line.between(rect.x0(), y, rect.x1(), y, Pen.DIMENSION),
                tick(rect.x0(), y),
                tick(rect.x1(), y),
                Line.between(x, rect.y0(), x, rect.y1(), Pen.DIMENSION),
                tick(x, rect.y0()),
                tick(x, rect.y1())));
        shapes.addAll(grounds(List.of(along, across)));
        shapes.add(along);
        shapes.add(across);
        return shapes;
    }

    private static Shape tick(double x, double y) {
        double half = 0.8;
        return Line.between(x - half, y - half, x + half, y + half, Pen.OUTLINE);
    }

    /** White behind letters. */
    private List<Shape> grounds(List<Shape> lines) {
        return Lettering.of(lines, measure).texts().stream()
                .<Shape>map(line -> Polygon.area(grown(line.box()), Fill.WHITE))
                .toList();
    }

    private static Rect grown(Rect rect) {
        return new Rect(rect.x0() - CLEAR, rect.y0() - CLEAR, rect.x1() + CLEAR, rect.y1() + CLEAR);
    }

    /** Lines at 45° that end at the rectangle's sides. */
    static List<Shape> hatching(Rect rect) {
        var lines = new ArrayList<Shape>();
        double reach = rect.width() + rect.height();
        for (double c = HATCH; c < reach; c += HATCH) {
            // x - x0 + y - y0 = c
            double left = Math.max(0, c - rect.height());
            double right = Math.min(c, rect.width());
            lines.add(Line.between(
                    rect.x0() + left, rect.y0() + c - left, rect.x0() + right, rect.y0() + c - right, Pen.THIN));
        }
        return lines;
    }
}
