package org.standwright.make;

import java.util.List;
import org.standwright.advice.Cures;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.check.wall.HungWall;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.solid.AssemblySolids;

/** What the rules find in each kind of furniture, with cures. */
record Judged(AssemblySolids solids) implements FurnitureVisitor<List<Finding>> {
    @Override
    public List<Finding> stand(Stand stand) {
        var loaded = LoadedStand.of(stand, solids);
        return Cures.of(loaded, solids, Checks.of(loaded));
    }

    @Override
    public List<Finding> wall(CleatWall wall) {
        var hung = HungWall.of(wall, solids);
        return Cures.of(hung, solids, Checks.of(hung));
    }
}
