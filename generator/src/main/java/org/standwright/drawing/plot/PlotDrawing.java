package org.standwright.drawing.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.geom.Bend;
import org.standwright.geom.Vec2;

/** A plot on paper, at true size. */
public final class PlotDrawing {
    private PlotDrawing() {}

    /**
     * Lays it on a paper of its own.
     *
     * @param margin white round it, mm
     * @param pens what each layer is drawn with
     */
    public static Drawing of(Plot plot, double margin, Function<Layer, Pen> pens) {
        var shapes = new ArrayList<Shape>();
        for (var layer : plot.layers()) {
            var ink = new Ink(pens.apply(layer));
            layer.marks().forEach(mark -> shapes.addAll(mark.accept(ink)));
        }
        return new Drawing(
                plot.title(),
                plot.width() + 2 * margin,
                plot.height() + 2 * margin,
                List.of(new Group(new Point(margin, margin), shapes)));
    }

    private record Ink(Pen pen) implements MarkVisitor<List<Shape>> {
        /** Half of a spot's cross, mm. */
        private static final double ARM = 2;

        @Override
        public List<Shape> closed(Mark.Closed closed) {
            return closed.loop().sides().stream().map(this::side).toList();
        }

        private Shape side(Bend side) {
            if (!side.isArc()) {
                return line(side.from(), side.to());
            }
            var arm = side.from().minus(side.centre());
            double start = StrictMath.toDegrees(StrictMath.atan2(arm.y(), arm.x()));
            return new Arc(at(side.centre()), side.radius(), start, StrictMath.toDegrees(side.angle()), pen);
        }

        @Override
        public List<Shape> open(Mark.Open open) {
            var lines = new ArrayList<Shape>();
            for (int i = 1; i < open.points().size(); i++) {
                lines.add(line(open.points().get(i - 1), open.points().get(i)));
            }
            return lines;
        }

        @Override
        public List<Shape> circle(Mark.Circle circle) {
            return List.of(new Arc(at(circle.centre()), circle.diameter() / 2, 0, 360, pen));
        }

        @Override
        public List<Shape> spot(Mark.Spot spot) {
            var across = new Vec2(ARM, 0);
            var up = new Vec2(0, ARM);
            return List.of(
                    line(spot.at().minus(across), spot.at().plus(across)),
                    line(spot.at().minus(up), spot.at().plus(up)));
        }

        @Override
        public List<Shape> words(Mark.Words words) {
            return List.of(Text.level(words.words(), at(words.at()), words.size(), Text.Anchor.START));
        }

        private Line line(Vec2 from, Vec2 to) {
            return new Line(at(from), at(to), pen);
        }

        private static Point at(Vec2 point) {
            return new Point(point.x(), point.y());
        }
    }
}
