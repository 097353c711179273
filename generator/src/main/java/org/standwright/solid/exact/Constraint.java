package org.standwright.solid.exact;

import java.util.List;
import org.standwright.geom.Vec3;

/** A surface that a point has to lie on. */
interface Constraint {
    /** Points within this of a surface are on it, mm. */
    double ON = 1e-7;

    /** How far a point lies off it, mm, more than 0 on the side that the normal points to. */
    double distance(Vec3 point);

    /** Unit normal at the place nearest to a point. */
    Vec3 normal(Vec3 point);

    /**
     * The point near {@code start} that lies on all of them, by Newton's method with the least step that will do; as near
     * as it comes where there is none.
     */
    static Vec3 solve(List<? extends Constraint> all, Vec3 start) {
        return new Newton(all).from(start);
    }

    /** Whether a point lies on all of them. */
    static boolean hold(List<? extends Constraint> all, Vec3 point) {
        return all.stream().allMatch(one -> Math.abs(one.distance(point)) <= ON);
    }
}
