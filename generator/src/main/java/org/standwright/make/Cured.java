package org.standwright.make;

import java.util.List;
import org.standwright.advice.Cures;
import org.standwright.check.Finding;
import org.standwright.design.built.CleatWall;
import org.standwright.design.built.FurnitureVisitor;
import org.standwright.design.built.Stand;
import org.standwright.solid.AssemblySolids;

/** What was found in each kind of furniture, with the cures there are. */
record Cured(AssemblySolids solids, List<Finding> findings) implements FurnitureVisitor<List<Finding>> {
    @Override
    public List<Finding> stand(Stand stand) {
        return Cures.of(stand.design(), solids, findings);
    }

    @Override
    public List<Finding> wall(CleatWall wall) {
        return Cures.of(wall.design(), solids, findings);
    }
}
