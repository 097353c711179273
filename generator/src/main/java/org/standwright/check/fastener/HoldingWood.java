package org.standwright.check.fastener;

import java.util.Optional;
import org.standwright.part.Material;

/** Which wood a board counts as when a screw is to hold in it. */
public final class HoldingWood {
    private HoldingWood() {}

    /** Plywood and OSB as the lighter plywood, solid wood as spruce; MDF and particleboard are not rated. */
    public static Optional<SpecificGravity> of(Material material) {
        return switch (material.elasticity().board()) {
            case PLYWOOD, OSB -> Optional.of(SpecificGravity.PLYWOOD);
            case SOLID_WOOD -> Optional.of(SpecificGravity.SPRUCE_PINE_FIR);
            case MDF, PARTICLEBOARD -> Optional.empty();
        };
    }
}
