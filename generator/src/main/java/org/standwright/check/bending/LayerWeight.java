package org.standwright.check.bending;

import org.standwright.part.Material;
import org.standwright.unit.Gravity;

/** What boards weigh by their faces. */
final class LayerWeight {
    private LayerWeight() {}

    /** Weight of a layer of a material, N per mm² of its face. */
    static double of(Material material) {
        return Gravity.newtons(material.density() * 1e-9 * material.thickness());
    }
}
