package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.geom.Rect;

/** One view while it is being drawn: each chain of dimensions goes beyond those that its side already has. */
public final class View {
    private static final double CAPTION = 5;

    private final TextMeasure measure;
    private final List<Shape> shapes;
    private final Rect box;
    private final Map<Side, Double> taken = new EnumMap<>(Side.class);

    public View(List<Shape> shapes, TextMeasure measure) {
        this.measure = measure;
        this.shapes = new ArrayList<>(shapes);
        this.box = Extent.of(shapes, measure);
        Arrays.stream(Side.values()).forEach(side -> taken.put(side, 0.0));
    }

    /** Adds a chain; an empty one takes no room. */
    public View dimension(Side side, List<Span> spans) {
        if (!spans.isEmpty()) {
            var chain =
                    DimensionChain.of(side, edge(side), taken.get(side), spans, Lettering.of(shapes, measure), measure);
            shapes.addAll(chain.shapes());
            taken.put(side, chain.end());
        }
        return this;
    }

    /** Adds distances from one zero, named at its end; none take no room. */
    public View running(Side side, String name, List<RunningDimensions.Stop> stops) {
        if (!stops.isEmpty()) {
            var running = RunningDimensions.of(side, edge(side), taken.get(side), name, stops, measure);
            shapes.addAll(running.shapes());
            taken.put(side, running.end());
        }
        return this;
    }

    /** The view with its name below it. */
    public Figure named(String words) {
        var at = new Point((box.x0() + box.x1()) / 2, box.y0() - taken.get(Side.BELOW) - CAPTION);
        shapes.add(Text.level(words, at, Letters.BODY, Text.Anchor.MIDDLE));
        return Figure.around(shapes, measure);
    }

    private double edge(Side side) {
        return switch (side) {
            case BELOW -> box.y0();
            case ABOVE -> box.y1();
            case LEFT -> box.x0();
            case RIGHT -> box.x1();
        };
    }
}
