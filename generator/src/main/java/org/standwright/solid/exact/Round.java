package org.standwright.solid.exact;

import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** A surface round an axis, hollow as a drill leaves it: the wood is outside. */
public sealed interface Round extends Surface permits Cylinder, Cone {
    double PARALLEL = 1e-10;

    /** A point of the axis, where heights begin. */
    Vec3 point();

    /** Which way the axis runs, 1 long. */
    Vec3 axis();

    /** At a height above {@link #point}, mm. */
    double radiusAt(double height);

    /** Along the axis from {@link #point}, mm. */
    default double height(Vec3 at) {
        return axis().dot(at.minus(point()));
    }

    /** From the axis square out to a point, mm. */
    default Vec3 arm(Vec3 at) {
        var from = at.minus(point());
        return from.minus(axis().times(axis().dot(from)));
    }

    /** Whether another has the same axis, whichever way it runs. */
    default boolean isCoaxial(Round other) {
        return axis().cross(other.axis()).length() < PARALLEL
                && arm(other.point()).length() < Grid.STEP;
    }
}
