package org.standwright.make;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.check.wall.HungWall;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.solid.AssemblySolids;

/** What the rules find in each kind of furniture. */
record Judged(AssemblySolids solids) implements FurnitureVisitor<List<Finding>> {
    @Override
    public List<Finding> stand(Stand stand) {
        return Checks.of(LoadedStand.of(stand, solids));
    }

    @Override
    public List<Finding> wall(CleatWall wall) {
        return Checks.of(HungWall.of(wall, solids));
    }
}
