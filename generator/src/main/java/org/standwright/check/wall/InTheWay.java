package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.wall.Obstacle;
import org.standwright.design.wall.area.Zone;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** Furniture, radiators and pipes of all walls that reach into a space before one of them. */
final class InTheWay {
    private InTheWay() {}

    /**
     * What they are called, wall by wall: "'bench'", or "'bench' of wall 'west'".
     *
     * @param space in the frame of its wall
     * @param owner whose space it is
     */
    static List<String> of(HungWall wall, CleatedWall cleated, Box3 space, Zone owner) {
        var before = cleated.frame().apply(space);
        var names = new ArrayList<String>();
        for (var other : wall.wall().walls()) {
            var where = other.number() == cleated.number()
                    ? ""
                    : " of wall '" + other.wall().name() + "'";
            for (var zone : other.zones()) {
                if (!zone.equals(owner)
                        && standsOut(zone)
                        && before.overlap(other.frame().apply(box(zone))) > Grid.STEP) {
                    names.add("'" + zone.name() + "'" + where);
                }
            }
        }
        return names;
    }

    private static boolean standsOut(Zone zone) {
        return zone.kind().isFurniture()
                || (zone.kind() == Obstacle.Kind.RADIATOR || zone.kind() == Obstacle.Kind.PIPE)
                        && Grid.less(0, zone.depth());
    }

    /** Furniture down to the floor; one whose depth nobody said stands out a little all the same. */
    private static Box3 box(Zone zone) {
        var area = zone.itself();
        double low = zone.kind().isFurniture() ? zone.kept().y0() : area.y0();
        return new Box3(new Vec3(area.x0(), -Math.max(1, zone.depth()), low), new Vec3(area.x1(), 0, area.y1()));
    }
}
