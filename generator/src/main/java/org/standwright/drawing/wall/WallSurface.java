package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;

/** The wall itself: its bare area, the centres of its studs, the level line and its edges. */
record WallSurface(CleatedWall wall, Scale scale, TextMeasure measure) {
    private static final double NUMBER = 2.2;
    private static final double GAP = 1;

    /** Every patch pale, with what lies within it white. */
    List<Shape> bare() {
        var shapes = new ArrayList<Shape>();
        for (var patch : wall.bare().patches()) {
            shapes.add(polygon(patch.rim(), Optional.empty(), Fill.PALE));
            patch.holes().forEach(hole -> shapes.add(polygon(hole, Optional.empty(), Fill.WHITE)));
        }
        return shapes;
    }

    List<Shape> studs() {
        var shapes = new ArrayList<Shape>();
        for (var stud : wall.studs()) {
            double x = scale.paper(stud.x());
            Crossing.upright(wall.outline(), stud.x())
                    .forEach(run ->
                            shapes.add(Line.between(x, scale.paper(run.from()), x, scale.paper(run.to()), Pen.HIDDEN)));
        }
        return shapes;
    }

    /** As many as stand clear of each other, the first among them. */
    List<Shape> numbers() {
        var shapes = new ArrayList<Shape>();
        double y = scale.paper(wall.outline().bounds().y0()) - GAP - measure.above(NUMBER);
        double end = Double.NEGATIVE_INFINITY;
        for (var stud : wall.studs()) {
            var words = String.valueOf(stud.number());
            double half = measure.width(words, NUMBER, Weight.REGULAR) / 2;
            double x = scale.paper(stud.x());
            if (x - half >= end + GAP) {
                shapes.add(Text.level(words, new Point(x, y), NUMBER, Text.Anchor.MIDDLE));
                end = x + half;
            }
        }
        return shapes;
    }

    List<Shape> levelLine(double height) {
        double y = scale.paper(height);
        return Crossing.level(wall.outline(), height).stream()
                .<Shape>map(run -> Line.between(scale.paper(run.from()), y, scale.paper(run.to()), y, Pen.CENTRE))
                .toList();
    }

    /** Whether a rectangle of paper lies on the wall; right of walls without recesses in their sides. */
    boolean holds(Rect room) {
        return Stream.of(room.y0(), room.y1())
                .allMatch(y -> Crossing.level(wall.outline(), y * scale.times()).stream()
                        .anyMatch(run -> scale.paper(run.from()) <= room.x0() && room.x1() <= scale.paper(run.to())));
    }

    Shape edge() {
        return polygon(wall.outline(), Optional.of(Pen.WALL), Fill.NONE);
    }

    private Shape polygon(Outline outline, Optional<Pen> pen, Fill fill) {
        var points = outline.corners().stream()
                .map(corner -> new Point(scale.paper(corner.x()), scale.paper(corner.y())))
                .toList();
        return new Polygon(points, pen, fill);
    }
}
