package org.standwright.check.balance;

import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;

/**
 * A drawer or a door as it opens.
 *
 * @param group of the assembly that moves: 'drawer 1.2', 'door 2.1'
 * @param column name of the innermost bay; a lock for one drawer at a time works within it
 * @param drawer whether it is a drawer
 * @param grip where it is taken hold of when closed: the middle of its front's upper edge, of a door its free corner
 * @param travel of a drawer, mm
 * @param hinge of a door: where it turns, on its outer face, at its lower edge
 */
record Opening(String group, String column, boolean drawer, Vec3 grip, Vec3 travel, Vec3 hinge) {
    /** The way drawers open. */
    static final Vec2 OUTWARDS = new Vec2(0, -1);

    /** Where a point that moves with it comes to when it is open: a drawer all the way, a door by 90 degrees. */
    Vec3 open(Vec3 closed) {
        if (drawer) {
            return closed.plus(travel);
        }
        double across = closed.x() - hinge.x();
        double behind = closed.y() - hinge.y();
        return new Vec3(hinge.x() + Math.signum(across) * behind, hinge.y() - Math.abs(across), closed.z());
    }

    /** Where it is taken hold of when it is open. */
    Vec3 openGrip() {
        return open(grip);
    }
}
