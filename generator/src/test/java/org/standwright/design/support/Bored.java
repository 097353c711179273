package org.standwright.design.support;

import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Vec3;
import org.standwright.part.Hole;

/** Where a hole of a level part lies in the assembly's x and y. */
record Bored(PlacedPart part) {
    Hole at(Hole hole) {
        var at = part.placement().apply(new Vec3(hole.x(), hole.y(), 0));
        return new Hole(hole.face(), at.x(), at.y(), hole.diameter(), hole.depth(), hole.recess(), hole.purpose());
    }
}
