package org.standwright.make;

import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.built.Furniture;
import org.standwright.design.stand.StandBuilder;
import org.standwright.design.wall.build.WallBuilder;

/** Builds each kind of design; throws {@link org.standwright.design.ImpossibleDesignException} where that cannot be. */
final class Building implements DesignVisitor<Furniture> {
    @Override
    public Furniture stand(StandDesign design) {
        return StandBuilder.build(design);
    }

    @Override
    public Furniture wall(WallDesign design) {
        return WallBuilder.build(design);
    }
}
