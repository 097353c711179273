package org.standwright.design.top;

import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Rect;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;

/**
 * Something cut right through every board that it meets, in the assembly frame.
 *
 * @param seen from where the boards are seen
 * @param area its outline, or the square around a round one
 * @param radius of its corners, mm
 * @param purpose what comes through
 */
record Opening(Seen seen, Shape shape, Rect area, double radius, String purpose) {
    enum Shape {
        ROUND,
        RECTANGULAR
    }

    static Opening round(Seen seen, double x, double y, double diameter, String purpose) {
        return new Opening(seen, Shape.ROUND, Taken.around(x, y, diameter / 2), diameter / 2, purpose);
    }

    static Opening rectangular(Seen seen, Rect area, double radius, String purpose) {
        return new Opening(seen, Shape.RECTANGULAR, area, radius, purpose);
    }

    /** Whether it lies in a part; one that lies in none of it is not cut there. */
    boolean isIn(PlacedPart part) {
        return Taken.within(seen.of(part.box()), area);
    }

    /** The cut in a part that it lies in. */
    Feature in(PlacedPart part) {
        var local = new InPart(part).rect(seen, area);
        return shape == Shape.ROUND
                ? Hole.through((local.x0() + local.x1()) / 2, (local.y0() + local.y1()) / 2, local.width(), purpose)
                : Pocket.through(local, radius, purpose);
    }
}
