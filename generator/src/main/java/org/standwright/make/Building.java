package org.standwright.make;

import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Furniture;
import org.standwright.design.stand.StandBuilder;

/** Builds each kind of design; throws {@link org.standwright.design.ImpossibleDesignException} where that cannot be. */
final class Building implements DesignVisitor<Furniture> {
    @Override
    public Furniture stand(StandDesign design) {
        return StandBuilder.build(design);
    }
}
