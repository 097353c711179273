package org.standwright.design.wall.area;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.StandBox;
import org.standwright.design.wall.Wall;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;

/**
 * What all obstacles of one wall keep free, in the order of the design.
 *
 * @param notes which of them overlap
 */
public record Zones(List<Zone> zones, List<String> notes) {
    public Zones {
        zones = List.copyOf(zones);
        notes = List.copyOf(notes);
    }

    /**
     * Refuses an obstacle without a size, one that reaches out of the wall, and a swing on anything but a door.
     *
     * @param wallIndex place of the wall in the design, from 0
     */
    public static Zones of(WallDesign design, int wallIndex, Outline outline) {
        var wall = design.walls().get(wallIndex);
        var zones = IntStream.range(0, wall.obstacles().size())
                .mapToObj(at -> zone(design, wallIndex, at, outline))
                .toList();
        return new Zones(zones, overlaps(design, wall, zones));
    }

    private static Zone zone(WallDesign design, int wallIndex, int at, Outline outline) {
        var wall = design.walls().get(wallIndex);
        var field = "/walls/" + wallIndex + "/obstacles/" + at;
        var obstacle = wall.obstacles().get(at);
        var bounds = outline.bounds();
        var itself = new ObstacleSize(obstacle, wall.name(), design.unit(), field).itself(bounds);
        new InsideWall(outline, design.unit()).check(obstacle, wall.name(), itself, field);
        return new Zone(
                at,
                obstacle.called(),
                obstacle.kind(),
                itself,
                KeptFree.around(obstacle, itself, bounds, clear(design, wallIndex, bounds)),
                obstacle.stand().map(StandBox::depth).orElse(obstacle.depth()));
    }

    /** All of the wall but for the thickness of strips on the walls that it meets. */
    private static Interval clear(WallDesign design, int wallIndex, Rect bounds) {
        double strip = design.cleat().thickness() + Cleat.EASE;
        return new Interval(
                bounds.x0() + (wallIndex > 0 ? strip : 0),
                bounds.x1() - (wallIndex + 1 < design.walls().size() ? strip : 0));
    }

    private static List<String> overlaps(WallDesign design, Wall wall, List<Zone> zones) {
        var notes = new ArrayList<String>();
        for (int i = 0; i < zones.size(); i++) {
            for (int j = i + 1; j < zones.size(); j++) {
                var a = zones.get(i);
                var b = zones.get(j);
                double wide = shared(
                        a.itself().x0(),
                        a.itself().x1(),
                        b.itself().x0(),
                        b.itself().x1());
                double high = shared(
                        a.itself().y0(),
                        a.itself().y1(),
                        b.itself().y0(),
                        b.itself().y1());
                if (Grid.less(0, wide) && Grid.less(0, high)) {
                    notes.add("'" + a.name() + "' and '" + b.name() + "' of wall '" + wall.name() + "' overlap by "
                            + design.unit().length(wide) + " x " + design.unit().length(high)
                            + "; what they keep free is taken as one.");
                }
            }
        }
        return notes;
    }

    private static double shared(double from, double to, double otherFrom, double otherTo) {
        return Math.min(to, otherTo) - Math.max(from, otherFrom);
    }
}
