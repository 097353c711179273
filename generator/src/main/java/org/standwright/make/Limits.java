package org.standwright.make;

import org.standwright.check.wall.HungWall;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.wall.WallLabels;
import org.standwright.solid.AssemblySolids;

/** What each strip and holder may carry, as it is printed on drawings. */
final class Limits {
    private Limits() {}

    static WallLabels of(CleatWall wall, AssemblySolids solids) {
        HungWall.of(wall, solids);
        return WallLabels.NONE;
    }
}
