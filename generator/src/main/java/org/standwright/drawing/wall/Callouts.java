package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Spread;
import org.standwright.geom.Rect;

/** What places of a figure are, in a column at its right with a line to each. */
final class Callouts {
    private static final double SIZE = 2.5;
    private static final double GAP = 1;
    private static final double LEADER = 5;
    private static final double DOT = 0.35;

    private record Callout(String words, Point at) {}

    private final List<Callout> callouts = new ArrayList<>();

    void add(String words, Point at) {
        callouts.add(new Callout(words, at));
    }

    /** @param edge of the figure, on paper, mm */
    List<Shape> shapes(double edge, TextMeasure measure) {
        var sorted = callouts.stream()
                .sorted(Comparator.comparingDouble(callout -> callout.at.y()))
                .toList();
        var places = Spread.apart(
                sorted.stream().map(callout -> callout.at.y()).toList(),
                Collections.nCopies(sorted.size(), measure.pitch(SIZE)));
        var shapes = new ArrayList<Shape>();
        for (int i = 0; i < sorted.size(); i++) {
            var at = sorted.get(i).at;
            double y = places.get(i);
            shapes.add(Polygon.of(
                    new Rect(at.x() - DOT, at.y() - DOT, at.x() + DOT, at.y() + DOT), Pen.DIMENSION, Fill.GRAY));
            shapes.add(Line.between(at.x(), at.y(), edge + LEADER, y, Pen.DIMENSION));
            var words = new Point(edge + LEADER + GAP, y - measure.above(SIZE) / 2);
            shapes.add(Text.level(sorted.get(i).words, words, SIZE, Text.Anchor.START));
        }
        return shapes;
    }
}
