package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Rect;

/** Strips with their screws and the line at which the bevel meets the wall. */
record StripShapes(CleatedWall wall, Cleat cleat, Scale scale, TextMeasure measure) {
    /** Radius of a screw's head on paper, mm. */
    static final double SCREW = 0.5;

    private static final double WORDS = 1.9;
    private static final double GAP = 0.8;

    /** What a strip covers of the wall, on paper. */
    Rect area(Strip strip) {
        return scale.paper(new Rect(
                strip.along().from(),
                strip.top() - cleat.height(),
                strip.along().to(),
                strip.top()));
    }

    List<Shape> boards() {
        var shapes = new ArrayList<Shape>();
        for (var strip : wall.strips()) {
            var area = area(strip);
            shapes.add(Polygon.of(area, Pen.OUTLINE, Fill.LIGHT));
            double bevel = scale.paper(strip.top() + cleat.blunt() - cleat.rise());
            shapes.add(Line.between(area.x0(), bevel, area.x1(), bevel, Pen.THIN));
        }
        return shapes;
    }

    List<Shape> screws() {
        return wall.strips().stream()
                .flatMap(this::screws)
                .<Shape>map(at -> new Arc(at, SCREW, 0, 360, Pen.DIMENSION))
                .toList();
    }

    private Stream<Point> screws(Strip strip) {
        double foot = strip.top() - cleat.height();
        return strip.studs().stream()
                .flatMap(stud -> strip.screws().stream()
                        .map(height -> new Point(scale.paper(stud), scale.paper(foot + height))));
    }

    /**
     * Which strip of its row each is, and what it carries where there is room for it, at its ends, between the screws.
     *
     * @param lines better not run through words
     * @param holders whose own limits would be read for those of strips
     */
    void name(WallLabels labels, List<Rect> lines, List<Rect> holders, Tags tags) {
        wall.strips().stream()
                .flatMap(this::screws)
                .forEach(at -> tags.keepOff(new Rect(at.x() - SCREW, at.y() - SCREW, at.x() + SCREW, at.y() + SCREW)));
        for (var row : wall.rows()) {
            for (var strip : row.strips()) {
                var number = number(row, strip);
                tags.first(Stream.concat(clear(number, lines), number.stream()));
                labels.limit(strip.label()).ifPresent(limit -> tags.first(clear(limit(limit, strip), holders)));
            }
        }
    }

    private Stream<Text> clear(List<Text> places, List<Rect> of) {
        return places.stream().filter(text -> {
            var box = measure.box(text);
            return of.stream().noneMatch(area -> Lettering.overlap(area, box));
        });
    }

    private List<Text> number(Row row, Strip strip) {
        var words = row.number() + "." + (row.strips().indexOf(strip) + 1);
        double wide = measure.width(words, WORDS, Weight.REGULAR);
        return places(strip, wide)
                .map(room -> Text.level(words, new Point(room.x0(), baseline(room)), WORDS, Text.Anchor.START))
                .toList();
    }

    private List<Text> limit(String words, Strip strip) {
        double wide = measure.width(words, WORDS, Weight.REGULAR);
        var rooms = new ArrayList<>(places(strip, wide).toList());
        Collections.reverse(rooms);
        return rooms.stream()
                .map(room -> Text.level(words, new Point(room.x1(), baseline(room)), WORDS, Text.Anchor.END))
                .toList();
    }

    private double baseline(Rect room) {
        return (room.y0() + room.y1() - measure.above(WORDS)) / 2;
    }

    /** Rooms of this width along a strip, from the left. */
    private Stream<Rect> places(Strip strip, double wide) {
        var area = area(strip);
        double from = area.x0() + GAP;
        double step = 2;
        double to = area.x1() - GAP - wide;
        if (to < from) {
            return Stream.empty();
        }
        int steps = (int) Math.floor((to - from) / step);
        return DoubleStream.concat(
                        DoubleStream.iterate(0, i -> i + 1).limit(steps + 1L).map(i -> from + i * step),
                        DoubleStream.of(to))
                .mapToObj(x -> new Rect(x, area.y0(), x + wide, area.y1()));
    }
}
