package org.standwright.drawing.figure;

import java.util.List;
import org.standwright.drawing.Group;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Rect;

/**
 * A part of a drawing that is placed as a whole.
 *
 * @param box around all its ink, in its own frame
 */
public record Figure(Rect box, List<Shape> shapes) {
    public Figure {
        shapes = List.copyOf(shapes);
    }

    static Figure around(List<Shape> shapes, TextMeasure measure) {
        return new Figure(Extent.of(shapes, measure), shapes);
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
