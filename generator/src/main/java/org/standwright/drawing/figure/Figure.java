package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.drawing.Group;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/**
 * A part of a drawing that is placed as a whole.
 *
 * @param box around all its ink, in its own frame
 */
public record Figure(Rect box, List<Shape> shapes) {
    private static final double TITLE_GAP = 3;

    public Figure {
        shapes = List.copyOf(shapes);
    }

    /** A figure of shapes that cover an area. */
    public static Figure around(List<Shape> shapes, TextMeasure measure) {
        return new Figure(Extent.of(shapes, measure), shapes);
    }

    /** The figure with bold words above it, in lines no wider than itself or {@code least}, whichever is wider. */
    public Figure titled(String words, double least, TextMeasure measure) {
        var lines = measure.wrap(words, Math.max(width(), least), Letters.BODY, Weight.BOLD);
        var all = new ArrayList<>(shapes);
        double y = box.y1() + TITLE_GAP + (lines.size() - 1) * measure.pitch(Letters.BODY);
        for (var line : lines) {
            all.add(Text.level(line, new Point(box.x0(), y), Letters.BODY, Text.Anchor.START)
                    .bold());
            y -= measure.pitch(Letters.BODY);
        }
        return around(all, measure);
    }

    /** The figure with another one below it, their left edges in line. */
    public Figure over(Figure below, TextMeasure measure) {
        double y = box.y0() - TITLE_GAP - below.height();
        var all = new ArrayList<>(shapes);
        all.add(below.at(box.x0(), y));
        return around(all, measure);
    }

    public double width() {
        return box.width();
    }

    public double height() {
        return box.height();
    }

    /** The figure with the lower left corner of its box at a place. */
    public Group at(double x, double y) {
        return new Group(new Point(x - box.x0(), y - box.y0()), shapes);
    }
}
