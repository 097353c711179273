package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.drawing.figure.Scale;
import org.standwright.drawing.figure.View;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/** Walls from above at one scale, in the frame of the assembly. */
record PlanShapes(CleatWall walls, Scale scale, TextMeasure measure) {
    /** How thick walls are drawn, mm on paper. */
    private static final double THICK = 3;

    private static final double SIZE = 2.6;
    private static final double GAP = 1;

    /** Kept free before an electrical panel, mm: 36 in (NEC 110.26(A) and IRC E3405, as quoted in references 4). */
    private static final double WORKING_DEPTH = 914;

    Figure figure() {
        var tags = new Tags(measure);
        var shapes = new ArrayList<Shape>();
        walls.walls().forEach(wall -> shapes.add(band(wall)));
        walls.holders().forEach(holder -> {
            var box = holder.made().box();
            double x0 = holder.x() + box.min().x();
            double x1 = holder.x() + box.max().x();
            shapes.add(
                    Polygon.of(area(walls.wall(holder.wall()), x0, x1, box.min().y(), 0), Pen.DOTTED, Fill.NONE));
        });
        for (var wall : walls.walls()) {
            wall.zones().forEach(zone -> shapes.addAll(obstacle(wall, zone, tags)));
            shapes.add(name(wall));
        }
        shapes.addAll(tags.shapes());
        var words = "From above, scale " + scale + "; dotted: holders with their things";
        var view = new View(shapes, measure).named(words);
        return tags.key().isEmpty()
                ? view
                : view.over(ElevationKey.of(tags.key(), Math.max(view.width(), 80), measure), measure);
    }

    private Polygon band(CleatedWall wall) {
        double end = wall.outline().bounds().x1();
        return Polygon.of(area(wall, 0, end, 0, THICK * scale.times()), Pen.OUTLINE, Fill.PALE);
    }

    private List<Shape> obstacle(CleatedWall wall, Zone zone, Tags tags) {
        var itself = zone.itself();
        var shapes = new ArrayList<Shape>();
        if (zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL) {
            var kept = zone.kept();
            var space = area(wall, kept.x0(), kept.x1(), -WORKING_DEPTH, 0);
            shapes.addAll(Hatch.WIRING.over(space));
            shapes.add(Polygon.of(space, Pen.THIN, Fill.NONE));
            tags.name("working space, kept free", Optional.empty(), List.of(List.of(space)), space);
        }
        if (zone.kind() == Obstacle.Kind.DOOR || zone.kind() == Obstacle.Kind.WINDOW) {
            var opening = area(wall, itself.x0(), itself.x1(), 0, THICK * scale.times());
            shapes.add(Polygon.of(opening, Pen.OUTLINE, Fill.WHITE));
            tags.name(zone.name(), Optional.empty(), List.of(List.of(opening)), opening);
            wall.wall().obstacles().get(zone.at()).swing().ifPresent(swing -> shapes.addAll(leaf(wall, zone, swing)));
        } else if (Grid.less(0, zone.depth())) {
            var box = area(wall, itself.x0(), itself.x1(), -zone.depth(), 0);
            shapes.add(Polygon.of(box, zone.kind() == Obstacle.Kind.BEAM ? Pen.HIDDEN : Pen.OUTLINE, Fill.NONE));
            tags.name(zone.name(), Optional.empty(), List.of(List.of(box)), box);
        }
        return shapes;
    }

    /** The open leaf and the way that its edge takes. */
    private List<Shape> leaf(CleatedWall wall, Zone zone, Swing swing) {
        boolean left = swing.hinges() == Swing.Side.LEFT;
        var hinge = paper(wall, left ? zone.itself().x0() : zone.itself().x1(), 0);
        var right = wall.frame().right().unit();
        double along = StrictMath.toDegrees(StrictMath.atan2(right.y(), right.x()));
        double radius = scale.paper(zone.itself().width());
        var way = new Arc(hinge, radius, left ? along : along + 180, left ? -swing.angle() : swing.angle(), Pen.HIDDEN);
        var open = way.at(way.sweep());
        return List.of(way, new Line(hinge, open, Pen.OUTLINE));
    }

    /** Outside the wall, along it. */
    private Text name(CleatedWall wall) {
        double width = wall.outline().bounds().x1();
        var words = wall.wall().name() + "  " + walls.design().unit().bareLength(width);
        double away = (THICK + GAP) * scale.times();
        var at = paper(wall, width / 2, away);
        double high = measure.above(SIZE);
        return switch (wall.frame().right()) {
            case X_MINUS -> Text.level(words, new Point(at.x(), at.y() - high), SIZE, Text.Anchor.MIDDLE);
            case Y_MINUS ->
                Text.level(words, new Point(at.x() + high, at.y()), SIZE, Text.Anchor.MIDDLE)
                        .upward();
            case Y_PLUS -> Text.level(words, at, SIZE, Text.Anchor.MIDDLE).upward();
            case X_PLUS, Z_PLUS, Z_MINUS -> Text.level(words, at, SIZE, Text.Anchor.MIDDLE);
        };
    }

    /** Part of a wall's plan, its y into the wall, on paper. */
    private Rect area(CleatedWall wall, double x0, double x1, double y0, double y1) {
        var box = wall.frame().apply(new Box3(new Vec3(x0, y0, 0), new Vec3(x1, y1, 0)));
        return scale.paper(
                new Rect(box.min().x(), box.min().y(), box.max().x(), box.max().y()));
    }

    private Point paper(CleatedWall wall, double x, double y) {
        var at = wall.frame().apply(new Vec3(x, y, 0));
        return new Point(scale.paper(at.x()), scale.paper(at.y()));
    }
}
