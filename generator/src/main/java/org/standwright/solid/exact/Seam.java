package org.standwright.solid.exact;

import java.util.List;
import org.standwright.geom.Vec3;

/**
 * Where a round face that goes all the way round is cut open: a straight line on it.
 *
 * @param out the way from the axis to it, 1 long
 * @param sides of the mesh along it, one after the other
 */
record Seam(Round round, Vec3 out, List<Integer> sides) {
    /** The plane through it and the axis. */
    Plane plane() {
        return Plane.through(round.point(), round.axis().cross(out));
    }
}
