package org.standwright.check.wall;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.unit.Units;

/** Walls of cleats with everything that hangs on them, weighed: boards as solids, and the things. */
public record HungWall(CleatWall wall, List<HeldLoad> loads) {
    public HungWall {
        loads = List.copyOf(loads);
    }

    /** @param solids of these very walls */
    public static HungWall of(CleatWall wall, AssemblySolids solids) {
        Map<String, List<PlacedSolid>> groups =
                solids.solids().stream().collect(Collectors.groupingBy(PlacedSolid::group));
        return new HungWall(
                wall,
                wall.holders().stream()
                        .map(holder -> load(wall, holder, groups.getOrDefault(holder.name(), List.of())))
                        .toList());
    }

    public WallDesign design() {
        return wall.design();
    }

    /** What its maker reads. */
    public Units units() {
        return design().unit();
    }

    private static HeldLoad load(CleatWall wall, HungHolder holder, List<PlacedSolid> boards) {
        var frame = wall.wall(holder.wall()).frame();
        double wood = 0;
        var moment = Vec3.ZERO;
        for (var board : boards) {
            double mass = board.mass();
            wood += mass;
            moment = moment.plus(frame.local(board.massProperties().centre()).times(mass));
        }
        double things = holder.made().holder().things().wholeMass();
        var at = holder.made().thingsCentre().plus(new Vec3(holder.x(), 0, holder.rowHeight()));
        moment = moment.plus(at.times(things));
        double all = wood + things;
        return new HeldLoad(holder, wood, things, -moment.y() / all, moment.x() / all);
    }
}
