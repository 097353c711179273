package org.standwright.advice;

import java.util.Optional;
import org.standwright.check.LoadedStand;
import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.AssemblySolids;

/** Builds and weighs a changed stand; other furniture is none. */
record RebuiltStand(AssemblySolids solids) implements DesignVisitor<Optional<LoadedStand>> {
    @Override
    public Optional<LoadedStand> stand(StandDesign design) {
        var stand = StandBuilder.build(design);
        return Optional.of(LoadedStand.of(stand, solids.rebuilt(stand.assembly())));
    }

    @Override
    public Optional<LoadedStand> wall(WallDesign design) {
        return Optional.empty();
    }
}
