package org.standwright.assembly;

import org.standwright.geom.Box3;
import org.standwright.geom.Require;
import org.standwright.part.Part;

/**
 * One part at its place.
 *
 * @param label its own name, once in an assembly: 'left side', 'drawer 1.2 bottom'
 */
public record PlacedPart(String label, Part part, Placement placement) {
    public PlacedPart {
        Require.named("part in an assembly", label);
    }

    /** The box of the blank, in assembly coordinates. */
    public Box3 box() {
        return placement.box(part);
    }
}
