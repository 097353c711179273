package org.standwright.drawing.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Group;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.Side;
import org.standwright.drawing.figure.Sight;
import org.standwright.drawing.figure.View;
import org.standwright.unit.Units;

/** Front and right side of a holder, dimensioned in the maker's units. */
public final class HolderViews {
    private static final List<Scale> SCALES = Stream.of(2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40)
            .map(Scale::new)
            .toList();

    private static final double BETWEEN = 6;
    /** Half a cross at the middle of a hole, mm. */
    private static final double CROSS = 0.9;

    private final EqualHolders holder;
    private final List<Bored> bored;
    private final Cleat cleat;
    private final Units units;
    private final TextMeasure measure;

    private HolderViews(EqualHolders holder, Cleat cleat, Units units, TextMeasure measure) {
        this.holder = holder;
        this.bored = Bored.of(holder);
        this.cleat = cleat;
        this.units = units;
        this.measure = measure;
    }

    /**
     * At the largest scale of the series at which both views fit, side by side or one above the other.
     *
     * @param cleat that all strips and hangers share
     * @param width of the room on paper, mm
     * @param height of the room on paper, mm
     */
    public static Figure of(
            EqualHolders holder, Cleat cleat, Units units, double width, double height, TextMeasure measure) {
        var views = new HolderViews(holder, cleat, units, measure);
        return SCALES.stream()
                .flatMap(scale -> views.draw(scale).stream())
                .filter(figure -> figure.width() <= width && figure.height() <= height)
                .findFirst()
                .orElseGet(() -> views.draw(SCALES.get(SCALES.size() - 1)).get(0));
    }

    private List<Figure> draw(Scale scale) {
        var front = front(scale);
        var side = side(scale);
        var beside = new Point(front.box().x1() - side.box().x0() + BETWEEN, 0);
        var below = new Point(
                front.box().x0() - side.box().x0(),
                front.box().y0() - side.box().y1() - BETWEEN);
        return List.of(arranged(front, side, beside), arranged(front, side, below));
    }

    private Figure arranged(Figure front, Figure side, Point at) {
        return Figure.around(
                List.of(new Group(new Point(0, 0), front.shapes()), new Group(at, side.shapes())), measure);
    }

    private Figure front(Scale scale) {
        var stops = new HolderStops(holder, bored, cleat, units, scale);
        var shapes = boards(Sight.FRONT, scale);
        bored.forEach(hole -> shapes.addAll(mark(hole, scale)));
        var view = new View(shapes, measure)
                .running(Side.BELOW, "", stops.uprights())
                .dimension(Side.BELOW, stops.wholeWidth())
                .running(Side.LEFT, "", stops.fromTop())
                .dimension(Side.RIGHT, stops.wholeHeight());
        stops.across().forEach(line -> view.running(Side.ABOVE, line.name(), line.stops()));
        return view.named("Front, scale " + scale);
    }

    private Figure side(Scale scale) {
        var stops = new HolderStops(holder, bored, cleat, units, scale);
        var shapes = new ArrayList<>(new Neighbours(holder, cleat, scale).shapes());
        shapes.addAll(boards(Sight.RIGHT, scale));
        shapes.addAll(holder.made().holder().accept(new StandingOut(holder, bored, scale)));
        return new View(shapes, measure)
                .running(Side.BELOW, "", stops.depths())
                .dimension(Side.BELOW, stops.wholeDepth())
                .running(Side.LEFT, "", stops.heights())
                .running(Side.RIGHT, "", stops.behind())
                .named("Right side");
    }

    private List<Shape> boards(Sight sight, Scale scale) {
        var seen = SeenBoards.of(holder.boards(), sight);
        var shapes = new ArrayList<Shape>();
        seen.hidden().forEach(segment -> shapes.add(line(segment, scale, Pen.HIDDEN)));
        seen.visible().forEach(segment -> shapes.add(line(segment, scale, Pen.OUTLINE)));
        new ThingsRoom(holder, sight)
                .outline()
                .forEach(side ->
                        side.without(seen.visible()).forEach(piece -> shapes.add(line(piece, scale, Pen.DOTTED))));
        return shapes;
    }

    /** A cross at its middle, and its rim where what goes in is seen. */
    private static List<Shape> mark(Bored hole, Scale scale) {
        if (hole.look() == Bored.Look.CUTOUT) {
            return List.of();
        }
        double x = scale.paper(hole.at().x());
        double y = scale.paper(hole.at().z());
        var shapes = new ArrayList<Shape>();
        shapes.add(Line.between(x - CROSS, y, x + CROSS, y, Pen.DIMENSION));
        shapes.add(Line.between(x, y - CROSS, x, y + CROSS, Pen.DIMENSION));
        if (hole.look() == Bored.Look.BORE) {
            shapes.add(new Arc(new Point(x, y), scale.paper(hole.diameter() / 2), 0, 360, Pen.THIN));
        }
        return shapes;
    }

    private static Shape line(Segment segment, Scale scale, Pen pen) {
        return Line.between(
                scale.paper(segment.from().x()),
                scale.paper(segment.from().y()),
                scale.paper(segment.to().x()),
                scale.paper(segment.to().y()),
                pen);
    }
}
