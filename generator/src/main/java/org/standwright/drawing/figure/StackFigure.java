package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Stand;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.geom.Rect;
import org.standwright.unit.Units;

/** The height stack as a column of layers, floor to working height. */
public final class StackFigure {
    private static final double WIDTH = 26;
    private static final double FLOOR = 8;

    private StackFigure() {}

    /** The column, {@code height} mm tall on paper; terms of no height are left out. */
    public static Figure of(Stand stand, double height, TextMeasure measure) {
        var units = stand.design().unit();
        var stack = PrintedStack.of(stand.stack(), units);
        double scale = height / stack.sum().height();
        var layers = new ArrayList<Shape>();
        var spans = new ArrayList<Span>();
        double z = 0;
        for (var layer : stack.layers()) {
            double top = z + layer.height() * scale;
            if (top - z > 1e-3) {
                var fill = layers.size() % 2 == 0 ? Fill.LIGHT : Fill.WHITE;
                layers.add(Polygon.of(new Rect(0, z, WIDTH, top), Pen.OUTLINE, fill));
                spans.add(new Span(z, top, words(layer, units)));
            }
            z = top;
        }
        return finished(layers, spans, new Span(0, z, units.length(stack.sum().height())), measure);
    }

    private static String words(PrintedStack.Layer layer, Units units) {
        var range = layer.isAdjustable()
                ? " (" + units.bareLength(layer.lowest()) + " to " + units.bareLength(layer.highest()) + ")"
                : "";
        return layer.name() + "  " + units.bareLength(layer.height()) + range;
    }

    private static Figure finished(List<Shape> layers, List<Span> terms, Span whole, TextMeasure measure) {
        var none = new Lettering(List.of());
        var shapes = new ArrayList<>(layers);
        shapes.add(Line.between(-FLOOR, 0, WIDTH + FLOOR, 0, Pen.OUTLINE));
        shapes.addAll(
                DimensionChain.of(Side.RIGHT, WIDTH, 0, terms, none, measure).shapes());
        shapes.addAll(DimensionChain.of(Side.LEFT, 0, 0, List.of(whole), none, measure)
                .shapes());
        return Figure.around(shapes, measure);
    }
}
