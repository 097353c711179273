package org.standwright.advice;

import java.util.Optional;
import org.standwright.check.wall.HungWall;
import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.solid.AssemblySolids;

/** Builds and weighs changed walls of cleats; other furniture is none. */
record RebuiltWall(AssemblySolids solids) implements DesignVisitor<Optional<HungWall>> {
    @Override
    public Optional<HungWall> stand(StandDesign design) {
        return Optional.empty();
    }

    @Override
    public Optional<HungWall> wall(WallDesign design) {
        var wall = WallBuilder.build(design);
        return Optional.of(HungWall.of(wall, solids.rebuilt(wall.assembly())));
    }
}
