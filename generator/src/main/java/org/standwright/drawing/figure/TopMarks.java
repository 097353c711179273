package org.standwright.drawing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Side;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Letters;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

/** What is drawn on the top view beside its boxes: numbered holes, bolts, the operator's side and the feed. */
record TopMarks(Stand stand, Box3 worktop, Scale scale, TextMeasure measure) {
    private static final double SIZE = 2.0;
    private static final double CROSS = 1.2;
    private static final double HEAD = 1.6;
    private static final double CLEAR = 0.8;

    List<Shape> shapes() {
        var shapes = new ArrayList<Shape>();
        stand.machine().ifPresent(machine -> {
            shapes.addAll(Outline.of(scale.paper(Sight.TOP.project(machine.base())), 0));
            machine.bolts().forEach(bolt -> shapes.addAll(cross(bolt)));
            shapes.addAll(onWhite(operator(machine.operator())));
            machine.infeed().ifPresent(side -> shapes.addAll(feed(side, machine)));
        });
        holes(shapes);
        return shapes;
    }

    private void holes(List<Shape> shapes) {
        var holes = PanelHole.inWorktop(stand);
        for (int i = 0; i < holes.size(); i++) {
            var area = paper(holes.get(i).area());
            shapes.addAll(drawn(holes.get(i), area));
            number(String.valueOf(i + 1), area, shapes).ifPresent(shapes::add);
        }
    }

    private List<Shape> drawn(PanelHole hole, Rect area) {
        if (hole.isRound()) {
            return List.of(circle(area));
        }
        return hole.outline()
                .map(outline -> List.<Shape>of(new Polygon(
                        outline.corners().stream().map(this::paper).toList(), Optional.of(Pen.OUTLINE), Fill.NONE)))
                .orElseGet(() -> Outline.of(area, scale.paper(hole.radius())));
    }

    private Point paper(Vec2 at) {
        return new Point(
                scale.paper(at.x() + worktop.min().x()),
                scale.paper(at.y() + worktop.min().y()));
    }

    /** An area from the worktop's corner, on paper. */
    private Rect paper(Rect area) {
        double x = worktop.min().x();
        double y = worktop.min().y();
        return scale.paper(new Rect(area.x0() + x, area.y0() + y, area.x1() + x, area.y1() + y));
    }

    private static Shape circle(Rect area) {
        var centre = new Point((area.x0() + area.x1()) / 2, (area.y0() + area.y1()) / 2);
        return new Arc(centre, area.width() / 2, 0, 360, Pen.OUTLINE);
    }

    /** Beside a hole, at the first of its corners where no other letters stand. */
    private Optional<Text> number(String words, Rect hole, List<Shape> drawn) {
        var taken = Lettering.of(drawn, measure);
        double right = hole.x1() + CLEAR;
        double left = hole.x0() - CLEAR;
        double above = hole.y1() + CLEAR;
        double below = hole.y0() - CLEAR - measure.above(SIZE);
        return Stream.of(
                        Text.level(words, new Point(right, above), SIZE, Text.Anchor.START),
                        Text.level(words, new Point(left, above), SIZE, Text.Anchor.END),
                        Text.level(words, new Point(left, below), SIZE, Text.Anchor.END),
                        Text.level(words, new Point(right, below), SIZE, Text.Anchor.START))
                .filter(text -> taken.leavesFree(measure.box(text)))
                .findFirst();
    }

    private List<Shape> cross(Point2 bolt) {
        double x = scale.paper(bolt.x());
        double y = scale.paper(bolt.y());
        return List.of(
                Line.between(x - CROSS, y, x + CROSS, y, Pen.DIMENSION),
                Line.between(x, y - CROSS, x, y + CROSS, Pen.DIMENSION));
    }

    /** Along the inside of the worktop's edge at which the person works. */
    private Text operator(Side side) {
        var edge = scale.paper(Sight.TOP.project(worktop));
        double x = (edge.x0() + edge.x1()) / 2;
        double y = (edge.y0() + edge.y1()) / 2;
        double high = measure.above(Letters.DIMENSION);
        var words = "operator";
        return switch (side) {
            case FRONT -> Text.level(words, new Point(x, edge.y0() + CLEAR), Letters.DIMENSION, Text.Anchor.MIDDLE);
            case BACK ->
                Text.level(words, new Point(x, edge.y1() - CLEAR - high), Letters.DIMENSION, Text.Anchor.MIDDLE);
            case LEFT ->
                Text.level(words, new Point(edge.x0() + CLEAR + high, y), Letters.DIMENSION, Text.Anchor.MIDDLE)
                        .upward();
            case RIGHT ->
                Text.level(words, new Point(edge.x1() - CLEAR, y), Letters.DIMENSION, Text.Anchor.MIDDLE)
                        .upward();
        };
    }

    private List<Shape> onWhite(Text text) {
        return List.of(Polygon.area(measure.box(text), Fill.WHITE), text);
    }

    /** An arrow over the machine, from the side at which boards go in to the other one. */
    private List<Shape> feed(Side infeed, MachineLayout machine) {
        var base = scale.paper(Sight.TOP.project(machine.base()));
        double x = (base.x0() + base.x1()) / 2;
        double y = (base.y0() + base.y1()) / 2;
        double across = 0.35 * base.width();
        double along = 0.35 * base.height();
        return switch (infeed) {
            case LEFT -> arrow(new Point(x - across, y), new Point(x + across, y), new Point(HEAD, 0));
            case RIGHT -> arrow(new Point(x + across, y), new Point(x - across, y), new Point(-HEAD, 0));
            case FRONT -> arrow(new Point(x, y - along), new Point(x, y + along), new Point(0, HEAD));
            case BACK -> arrow(new Point(x, y + along), new Point(x, y - along), new Point(0, -HEAD));
        };
    }

    private List<Shape> arrow(Point from, Point to, Point head) {
        var middle = new Point((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
        boolean level = head.y() == 0;
        var words = level
                ? Text.level("feed", middle.plus(new Point(0, CLEAR)), Letters.DIMENSION, Text.Anchor.MIDDLE)
                : Text.level("feed", middle.plus(new Point(-CLEAR, 0)), Letters.DIMENSION, Text.Anchor.MIDDLE)
                        .upward();
        var back = new Point(to.x() - head.x(), to.y() - head.y());
        double wing = HEAD / 3;
        return List.of(
                new Line(from, to, Pen.OUTLINE),
                new Line(to, back.plus(level ? new Point(0, wing) : new Point(wing, 0)), Pen.OUTLINE),
                new Line(to, back.plus(level ? new Point(0, -wing) : new Point(-wing, 0)), Pen.OUTLINE),
                words);
    }
}
