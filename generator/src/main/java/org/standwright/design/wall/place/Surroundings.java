package org.standwright.design.wall.place;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Strip;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Vec3;

/** What a wall's holders must not meet, whatever else hangs: zones of the wall, what stands out from others, doors. */
final class Surroundings {
    private static final Set<Obstacle.Kind> HOT =
            EnumSet.of(Obstacle.Kind.STAND, Obstacle.Kind.RADIATOR, Obstacle.Kind.ELECTRICAL_PANEL);

    /** Depth of the working space before an electrical panel, 36 in, mm (NEC 110.26(A), IRC E3405, as quoted in references 4). */
    private static final double WORKING_SPACE = 914;

    private final List<CleatedWall> walls;
    private final List<WallPlan> plans;
    private final Cleat cleat;

    Surroundings(List<CleatedWall> walls, Cleat cleat) {
        this.walls = walls;
        this.plans = walls.stream().map(wall -> WallPlan.of(wall.frame())).toList();
        this.cleat = cleat;
    }

    WallPlan plan(int wall) {
        return plans.get(wall);
    }

    /**
     * @param wall its place among the walls, from 0
     * @param deepest how far the deepest holder reaches out, mm
     */
    List<Obstruction> before(int wall, double deepest) {
        var all = new ArrayList<Obstruction>();
        walls.get(wall).zones().forEach(zone -> all.add(over(zone)));
        for (int other = 0; other < walls.size(); other++) {
            if (other != wall) {
                int owner = other;
                boxes(other).forEach(box -> all.add(plans.get(wall).obstruction(box.what, box.box, plans.get(owner))));
            }
            all.addAll(sweeps(other, wall));
        }
        all.removeIf(any -> any.footprint().shadow(deepest).isEmpty());
        return all;
    }

    /** Stands with machines, heaters and panels, over all the height above them, where nothing flammable hangs. */
    List<Obstruction> hot(int wall) {
        return walls.get(wall).zones().stream()
                .filter(zone -> HOT.contains(zone.kind()))
                .map(zone -> new Obstruction(
                        "'" + zone.name() + "', above which nothing flammable hangs,",
                        0,
                        Double.MAX_VALUE,
                        new Footprint.Oblong(
                                new Interval(zone.kept().x0(), zone.kept().x1()), 0),
                        0))
                .toList();
    }

    private static Obstruction over(Zone zone) {
        var kept = zone.kept();
        return new Obstruction(
                "'" + zone.name() + "', or what it keeps free,",
                kept.y0(),
                kept.y1(),
                new Footprint.Oblong(new Interval(kept.x0(), kept.x1()), 0),
                0);
    }

    private record Standing(String what, Box3 box) {}

    /** What stands out from a wall, in its frame. */
    private Stream<Standing> boxes(int wall) {
        var here = walls.get(wall);
        var called = " of wall '" + here.wall().name() + "'";
        return Stream.concat(
                here.zones().stream()
                        .filter(zone -> Grid.less(0, depth(zone)))
                        .map(zone -> new Standing(words(zone) + called, box(zone))),
                here.strips().stream().map(strip -> new Standing("'" + strip.label() + "'" + called, box(strip))));
    }

    private static String words(Zone zone) {
        return (zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL ? "the working space before '" : "'") + zone.name() + "'";
    }

    private static double depth(Zone zone) {
        return zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL ? Math.max(WORKING_SPACE, zone.depth()) : zone.depth();
    }

    private static Box3 box(Zone zone) {
        boolean allKept = zone.kind().isFurniture() || zone.kind() == Obstacle.Kind.ELECTRICAL_PANEL;
        var area = allKept ? zone.kept() : zone.itself();
        return new Box3(new Vec3(area.x0(), -depth(zone), area.y0()), new Vec3(area.x1(), 0, area.y1()));
    }

    private Box3 box(Strip strip) {
        return new Box3(
                new Vec3(strip.along().from(), -cleat.thickness(), strip.top() - cleat.height()),
                new Vec3(strip.along().to(), 0, strip.top()));
    }

    /** Doors of one wall before another, or before itself. */
    private List<Obstruction> sweeps(int owner, int wall) {
        var sweeps = new ArrayList<Obstruction>();
        for (var zone : walls.get(owner).zones()) {
            walls.get(owner).wall().obstacles().get(zone.at()).swing().ifPresent(swing -> {
                for (var piece : DoorSweep.of(zone.itself(), swing)) {
                    sweeps.add(new Obstruction(
                            "the swing of '" + zone.name() + "'",
                            zone.itself().y0(),
                            zone.itself().y1(),
                            new Footprint.Convex(plans.get(wall).corners(piece, plans.get(owner))),
                            0));
                }
            });
        }
        return sweeps;
    }
}
