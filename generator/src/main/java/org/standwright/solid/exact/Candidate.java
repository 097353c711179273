package org.standwright.solid.exact;

import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;

/**
 * A surface, and the box in which a feature leaves it.
 *
 * @param number of the surface among the different ones
 */
record Candidate(int number, Surface surface, Box3 within) {
    /** How far rounding takes the mesh out of its box at most, mm. */
    private static final double SLACK = 0.06;

    boolean reaches(Vec3 p) {
        var low = within.min();
        var high = within.max();
        return p.x() > low.x() - SLACK
                && p.x() < high.x() + SLACK
                && p.y() > low.y() - SLACK
                && p.y() < high.y() + SLACK
                && p.z() > low.z() - SLACK
                && p.z() < high.z() + SLACK;
    }
}
