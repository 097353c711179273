package org.standwright.design.top;

import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.part.Face;

/** Places of the assembly in the frame of one part: its placement the other way round. */
final class InPart {
    private final PlacedPart placed;

    InPart(PlacedPart placed) {
        this.placed = placed;
    }

    /** A rectangle seen square to the part's faces, in the part's x and y. */
    Rect rect(Seen seen, Rect area) {
        var a = placed.placement().local(seen.point(area.x0(), area.y0()));
        var b = placed.placement().local(seen.point(area.x1(), area.y1()));
        return new Rect(Math.min(a.x(), b.x()), Math.min(a.y(), b.y()), Math.max(a.x(), b.x()), Math.max(a.y(), b.y()));
    }

    /** The face that looks this way. */
    Face facing(Axis direction) {
        return placed.placement().through() == direction ? Face.SHOW : Face.BENCH;
    }
}
