package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;

/**
 * Distances from one zero along a view's edge: each stands at the end of a thin line from its place, moved aside where it
 * would lie on its neighbour. Below and above a view
 * they are read from the right where they stand too close to be level.
 *
 * @param end how far they reach away from the view, mm: where the next dimensions may begin
 */
public record RunningDimensions(List<Shape> shapes, double end) {
    private static final double SIZE = Letters.DIMENSION;
    private static final double GAP = 0.8;
    /** Straight on from the view, before a line may lean, mm. */
    private static final double STRAIGHT = 0.5;
    /** Over which a line leans to its figure, mm. */
    private static final double LEAN = 1.8;
    /** Farthest that level figures are moved aside below and above a view before they are turned, mm. */
    private static final double ASIDE = 4;

    public RunningDimensions {
        shapes = List.copyOf(shapes);
    }

    /**
     * One distance.
     *
     * @param at along the edge, on paper, mm
     */
    public record Stop(double at, String words) {}

    /**
     * @param edge of the view: its y below and above, its x at the sides
     * @param begin how far away from the edge there is room
     * @param name printed before the first of them below and above; nothing when empty
     */
    static RunningDimensions of(
            Side side, double edge, double begin, String name, List<Stop> stops, TextMeasure measure) {
        var sorted = stops.stream().sorted(Comparator.comparingDouble(Stop::at)).toList();
        var turned = new Layout(side, edge, begin, side.isLevel(), measure);
        var level = new Layout(side, edge, begin, false, measure);
        return (level.hasRoom(sorted) ? level : turned).draw(sorted, name);
    }

    private record Layout(Side side, double edge, double begin, boolean isTurned, TextMeasure measure) {
        boolean hasRoom(List<Stop> stops) {
            var places = places(stops);
            return IntStream.range(0, stops.size())
                    .allMatch(i -> Math.abs(places.get(i) - stops.get(i).at()) <= ASIDE);
        }

        RunningDimensions draw(List<Stop> stops, String name) {
            var places = places(stops);
            var shapes = new ArrayList<Shape>();
            double knee = begin + GAP + STRAIGHT;
            double foot = knee + LEAN;
            for (int i = 0; i < stops.size(); i++) {
                double at = stops.get(i).at();
                shapes.add(new Line(side.at(edge, at, begin + GAP), side.at(edge, at, knee), Pen.DIMENSION));
                shapes.add(new Line(side.at(edge, at, knee), side.at(edge, places.get(i), foot), Pen.DIMENSION));
                shapes.add(figure(places.get(i), foot + GAP, stops.get(i).words()));
            }
            double deep = stops.stream()
                    .mapToDouble(stop -> across(stop.words()))
                    .max()
                    .orElse(0);
            if (!name.isEmpty()) {
                double x = places.get(0) - along(stops.get(0).words()) / 2 - GAP;
                var middle = side.at(edge, x, foot + GAP + deep / 2);
                shapes.add(Text.level(name, lowered(middle, above() / 2), SIZE, Text.Anchor.END));
            }
            return new RunningDimensions(shapes, foot + GAP + deep);
        }

        private List<Double> places(List<Stop> stops) {
            return Spread.apart(
                    stops.stream().map(Stop::at).toList(),
                    stops.stream().map(stop -> along(stop.words())).toList());
        }

        /** Room that a figure takes along the edge. */
        private double along(String words) {
            return side.isLevel() && !isTurned ? width(words) + 2 * GAP : above() + GAP;
        }

        /** Room that a figure takes away from the view. */
        private double across(String words) {
            return side.isLevel() && !isTurned ? above() : width(words);
        }

        private double width(String words) {
            return measure.width(words, SIZE, Weight.REGULAR);
        }

        private double above() {
            return measure.above(SIZE);
        }

        /** A figure whose nearer end is {@code away} from the view. */
        private Text figure(double along, double away, String words) {
            var at = side.at(edge, along, away);
            return switch (side) {
                case ABOVE ->
                    isTurned ? turned(words, at, Text.Anchor.START) : Text.level(words, at, SIZE, Text.Anchor.MIDDLE);
                case BELOW ->
                    isTurned
                            ? turned(words, at, Text.Anchor.END)
                            : Text.level(words, lowered(at, above()), SIZE, Text.Anchor.MIDDLE);
                case LEFT -> Text.level(words, lowered(at, above() / 2), SIZE, Text.Anchor.END);
                case RIGHT -> Text.level(words, lowered(at, above() / 2), SIZE, Text.Anchor.START);
            };
        }

        private Text turned(String words, Point at, Text.Anchor anchor) {
            return Text.level(words, at.plus(new Point(above() / 2, 0)), SIZE, anchor)
                    .upward();
        }

        private static Point lowered(Point at, double by) {
            return at.plus(new Point(0, -by));
        }
    }
}
