package org.standwright.check.bending;

import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Axis;

/** How stiff a part is along an axis of the assembly, by how its grain lies there. */
final class GrainWay {
    private GrainWay() {}

    /** Modulus of elasticity in bending along {@code way}, N/mm². */
    static double modulus(PlacedPart part, Axis way) {
        var grain = part.placement().along();
        var elasticity = part.part().material().elasticity();
        return grain == way || grain == way.opposite() ? elasticity.along() : elasticity.across();
    }

    static Creep creep(PlacedPart part) {
        return new Creep(part.part().material().elasticity().board().kdef());
    }

    /** The section of a part that lies flat and bends over {@code way}, so many mm of it side by side. */
    static Section section(PlacedPart part, Axis way, double width) {
        return Section.plank(width, part.part().thickness(), modulus(part, way));
    }
}
