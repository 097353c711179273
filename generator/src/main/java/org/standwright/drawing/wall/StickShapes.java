package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Side;
import org.standwright.drawing.figure.Spread;
import org.standwright.drawing.figure.View;
import org.standwright.geom.Rect;

/** The story stick on paper: zero at the level line, a full mark at each high edge, a dashed one at each lower edge. */
record StickShapes(StoryStick stick, Scale scale, TextMeasure measure) {
    private static final double WIDTH = 7;
    /** How far the stick runs on beyond its last marks, mm. */
    private static final double BEYOND = 60;

    private static final double SIZE = 2.6;
    private static final double GAP = 1;
    private static final double LEADER = 4;

    private record Label(double at, String words) {}

    static Figure of(StoryStick stick, double width, double height, TextMeasure measure) {
        var life = new Scale.Size(BEYOND, top(stick) - foot(stick));
        return Scale.largest(life, width, height, scale -> List.of(new StickShapes(stick, scale, measure).figure()));
    }

    private Figure figure() {
        var shapes = new ArrayList<Shape>();
        shapes.add(Polygon.of(new Rect(0, paper(foot(stick)), WIDTH, paper(top(stick))), Pen.OUTLINE, Fill.PALE));
        stick.marks().forEach(mark -> {
            shapes.add(across(mark.edge(), Pen.OUTLINE));
            shapes.add(across(mark.lower(), Pen.HIDDEN));
        });
        shapes.add(Line.between(-LEADER, 0, WIDTH + LEADER, 0, Pen.CENTRE));
        shapes.addAll(labels());
        return new View(shapes, measure).dimension(Side.LEFT, steps()).named("Story stick, scale " + scale);
    }

    private Line across(double height, Pen pen) {
        return Line.between(0, paper(height), WIDTH, paper(height), pen);
    }

    private List<Shape> labels() {
        var labels = new ArrayList<Label>();
        labels.add(new Label(0, "level line: 0 of the stick"));
        stick.marks()
                .forEach(mark -> labels.add(new Label(
                        mark.edge(), "row " + mark.row() + "  " + SignedHeight.of(mark.edge(), stick.units()))));
        labels.sort(Comparator.comparingDouble(Label::at));
        var places = Spread.apart(
                labels.stream().map(label -> paper(label.at)).toList(),
                Collections.nCopies(labels.size(), measure.pitch(SIZE)));
        var shapes = new ArrayList<Shape>();
        double from = WIDTH + GAP;
        for (int i = 0; i < labels.size(); i++) {
            double y = places.get(i);
            shapes.add(Line.between(from, paper(labels.get(i).at), from + LEADER, y, Pen.DIMENSION));
            var at = new Point(from + LEADER + GAP, y - measure.above(SIZE) / 2);
            shapes.add(Text.level(labels.get(i).words, at, SIZE, Text.Anchor.START));
        }
        return shapes;
    }

    private List<Span> steps() {
        return stick.marks().stream()
                .filter(mark -> mark.step().isPresent())
                .map(mark -> new Span(
                        paper(mark.edge() - mark.step().get()),
                        paper(mark.edge()),
                        stick.units().bareLength(mark.step().get())))
                .toList();
    }

    private double paper(double height) {
        return scale.paper(height);
    }

    private static double foot(StoryStick stick) {
        return heights(stick).min().orElse(0) - BEYOND;
    }

    private static double top(StoryStick stick) {
        return heights(stick).max().orElse(0) + BEYOND;
    }

    private static DoubleStream heights(StoryStick stick) {
        return DoubleStream.concat(
                DoubleStream.of(0), stick.marks().stream().flatMapToDouble(m -> DoubleStream.of(m.edge(), m.lower())));
    }
}
