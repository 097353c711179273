package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.Swing;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.figure.Scale;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** What is on the wall and before it, within what it keeps free. */
record ObstacleShapes(CleatedWall wall, Scale scale) {
    /** Hatching of all that is kept free. */
    List<Shape> kept() {
        var shapes = new ArrayList<Shape>();
        for (var zone : wall.zones()) {
            var kept = scale.paper(zone.kept());
            shapes.addAll(Hatch.of(zone.kind()).over(kept));
            shapes.add(Polygon.of(kept, Pen.THIN, Fill.NONE));
        }
        return shapes;
    }

    /** The obstacles, those that stand out least first. */
    List<Shape> themselves() {
        var shapes = new ArrayList<Shape>();
        wall.zones().stream().sorted(Comparator.comparingDouble(Zone::depth)).forEach(zone -> {
            var itself = scale.paper(zone.itself());
            shapes.add(Polygon.of(itself, Pen.OUTLINE, Fill.WHITE));
            swing(zone).ifPresent(swing -> shapes.addAll(hinges(swing, itself)));
        });
        wall.zones().stream()
                .filter(this::isBehindAnother)
                .forEach(zone -> shapes.add(Polygon.of(scale.paper(zone.itself()), Pen.HIDDEN, Fill.NONE)));
        return shapes;
    }

    /** What each covers, on paper. */
    List<Rect> areas() {
        return wall.zones().stream().map(zone -> scale.paper(zone.itself())).toList();
    }

    /** What each keeps free, on paper. */
    List<Rect> keptAreas() {
        return wall.zones().stream().map(zone -> scale.paper(zone.kept())).toList();
    }

    /** Their names, those with least room first. */
    void name(Tags tags) {
        wall.zones().stream()
                .sorted(Comparator.comparingDouble(zone -> zone.itself().area()))
                .forEach(zone -> {
                    var itself = scale.paper(zone.itself());
                    tags.name(zone.name(), Optional.empty(), List.of(List.of(itself)), itself);
                });
    }

    private boolean isBehindAnother(Zone zone) {
        return wall.zones().stream()
                .anyMatch(other ->
                        Grid.less(zone.depth(), other.depth()) && Lettering.overlap(zone.itself(), other.itself()));
    }

    private Optional<Swing> swing(Zone zone) {
        return zone.kind() == Obstacle.Kind.DOOR
                ? wall.wall().obstacles().get(zone.at()).swing()
                : Optional.empty();
    }

    /** A dashed V that points at the hinges. */
    private static List<Shape> hinges(Swing swing, Rect door) {
        boolean left = swing.hinges() == Swing.Side.LEFT;
        double hinge = left ? door.x0() : door.x1();
        double handle = left ? door.x1() : door.x0();
        double middle = (door.y0() + door.y1()) / 2;
        return List.of(
                Line.between(hinge, middle, handle, door.y0(), Pen.HIDDEN),
                Line.between(hinge, middle, handle, door.y1(), Pen.HIDDEN));
    }
}
