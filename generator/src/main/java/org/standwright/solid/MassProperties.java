package org.standwright.solid;

import org.standwright.assembly.Placement;
import org.standwright.geom.Vec3;

/**
 * What a rigid body's weight does: mass, centre of mass and inertia about that centre.
 *
 * @param mass kg
 * @param centre of mass, mm
 * @param inertia about the centre of mass, along the frame's axes
 */
public record MassProperties(double mass, Vec3 centre, Inertia inertia) {
    /** Of no body at all; its centre says nothing. */
    public static final MassProperties NOTHING = new MassProperties(0, Vec3.ZERO, Inertia.ZERO);

    /** Of two bodies in one frame, as if glued together: the parallel axis theorem for both. */
    public MassProperties plus(MassProperties other) {
        double whole = mass + other.mass;
        if (whole == 0) {
            return NOTHING;
        }
        var apart = other.centre.minus(centre);
        return new MassProperties(
                whole,
                centre.plus(apart.times(other.mass / whole)),
                inertia.plus(other.inertia).plus(Inertia.of(mass * other.mass / whole, apart)));
    }

    /** The same body in the frame that {@code placement} puts it into. */
    public MassProperties placed(Placement placement) {
        return new MassProperties(mass, placement.apply(centre), inertia.turned(placement));
    }
}
