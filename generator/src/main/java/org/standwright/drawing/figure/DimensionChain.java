package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/**
 * Dimensions in one line along a view's edge. A figure stands between the line and the view; one that is too long for
 * its span stands beyond the line with a leader to it, so figures never overlap.
 *
 * @param end how far the chain reaches away from the view, mm: where the next may begin
 */
public record DimensionChain(List<Shape> shapes, double end) {
    private static final double SIZE = Letters.DIMENSION;
    private static final double GAP = 0.8;
    private static final double TICK = 0.8;
    private static final double LEADER = 2.2;

    public DimensionChain {
        shapes = List.copyOf(shapes);
    }

    /**
     * One dimension.
     *
     * @param from along the edge, on paper, mm
     * @param to along the edge, more than {@code from}
     */
    public record Span(double from, double to, String words) {
        double middle() {
            return (from + to) / 2;
        }
    }

    /**
     * @param edge of the view: its y for a level chain, its x for an upright one
     * @param begin how far away from the edge there is room
     * @param taken letters between the edge and there, which no extension line crosses
     */
    static DimensionChain of(
            Side side, double edge, double begin, List<Span> spans, Lettering taken, TextMeasure measure) {
        return new Layout(side, edge, begin, taken, measure).draw(spans);
    }

    private record Layout(Side side, double edge, double begin, Lettering taken, TextMeasure measure) {
        DimensionChain draw(List<Span> spans) {
            var inline = spans.stream().filter(this::fits).toList();
            var beyond = spans.stream()
                    .filter(span -> !fits(span))
                    .sorted(Comparator.comparingDouble(Span::middle))
                    .toList();
            double line = begin + 2 * GAP + Math.max(thickest(inline), GAP);
            var shapes = new ArrayList<Shape>();
            spans.forEach(span -> shapes.add(new Line(at(span.from(), line), at(span.to(), line), Pen.DIMENSION)));
            ends(spans).forEach(end -> mark(end, line, shapes));
            inline.forEach(span -> shapes.add(text(span, span.middle(), line - GAP - across(span))));
            var places = Spread.apart(
                    beyond.stream().map(Span::middle).toList(),
                    beyond.stream().map(span -> along(span) + GAP).toList());
            for (int i = 0; i < beyond.size(); i++) {
                var span = beyond.get(i);
                shapes.add(new Line(at(span.middle(), line), at(places.get(i), line + LEADER), Pen.DIMENSION));
                shapes.add(text(span, places.get(i), line + LEADER + GAP / 2));
            }
            double end = beyond.isEmpty() ? line + TICK : line + LEADER + GAP + thickest(beyond);
            return new DimensionChain(shapes, end);
        }

        private Point at(double along, double away) {
            return side.at(edge, along, away);
        }

        private boolean fits(Span span) {
            return along(span) + 2 * GAP <= span.to() - span.from();
        }

        private double thickest(List<Span> spans) {
            return spans.stream().mapToDouble(this::across).max().orElse(0);
        }

        /** Room that a figure takes along the line. */
        private double along(Span span) {
            return side.isLevel() ? width(span) : measure.above(SIZE);
        }

        /** Room that a figure takes away from the view. */
        private double across(Span span) {
            return side.isLevel() ? measure.above(SIZE) : width(span);
        }

        private double width(Span span) {
            return measure.width(span.words(), SIZE, Weight.REGULAR);
        }

        /** A figure whose nearer edge is {@code away} from the view. */
        private Text text(Span span, double along, double away) {
            double above = measure.above(SIZE);
            var at = switch (side) {
                case BELOW -> at(along, away + above);
                case ABOVE -> at(along, away);
                case LEFT -> at(along - above / 2, away + width(span) / 2);
                case RIGHT -> at(along - above / 2, away + width(span) / 2);
            };
            return Text.level(span.words(), at, SIZE, Text.Anchor.MIDDLE);
        }

        private void mark(double end, double line, List<Shape> shapes) {
            shapes.add(new Line(at(end, free(end) ? GAP : begin + GAP / 2), at(end, line + TICK), Pen.DIMENSION));
            var tick = at(end, line);
            shapes.add(Line.between(tick.x() - TICK, tick.y() - TICK, tick.x() + TICK, tick.y() + TICK, Pen.OUTLINE));
        }

        /** Whether an extension line at {@code end} meets no letters on its way from the view. */
        private boolean free(double end) {
            var a = at(end - GAP / 2, 0);
            var b = at(end + GAP / 2, begin + GAP);
            return taken.leavesFree(new Rect(
                    Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y())));
        }

        private static List<Double> ends(List<Span> spans) {
            return spans.stream()
                    .flatMap(span -> Stream.of(span.from(), span.to()))
                    .distinct()
                    .sorted()
                    .toList();
        }
    }
}
