package org.standwright.solid.exact;

import org.standwright.geom.Vec3;

/** A surface that a tool leaves, without end. */
public sealed interface Surface extends Constraint permits Plane, Round {
    @Override
    double distance(Vec3 point);

    @Override
    Vec3 normal(Vec3 point);

    /** Whether it is the same surface as another but for rounding. */
    boolean isSame(Surface other);
}
