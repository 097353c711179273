package org.standwright.packet.wall;

import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.geom.Grid;

/** Inside corners between consecutive walls. */
final class Corners {
    private Corners() {}

    /** Whether a strip comes so near to a corner at its right that one of the next wall has to stop short of it. */
    static boolean areReached(CleatWall walls) {
        double near = walls.design().cleat().thickness() + Cleat.EASE;
        return walls.walls().stream()
                .filter(wall -> wall.number() < walls.walls().size())
                .anyMatch(wall -> isReached(wall, near));
    }

    private static boolean isReached(CleatedWall wall, double near) {
        double corner = wall.outline().bounds().x1();
        return wall.strips().stream()
                .anyMatch(strip -> Grid.less(corner - strip.along().to(), near));
    }
}
