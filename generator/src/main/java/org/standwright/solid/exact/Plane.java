package org.standwright.solid.exact;

import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/**
 * A plane.
 *
 * @param normal 1 long, out of the wood
 * @param offset of the plane from the origin along its normal, mm
 */
public record Plane(Vec3 normal, double offset) implements Surface {
    private static final double PARALLEL = 1e-10;

    static Plane through(Vec3 point, Vec3 normal) {
        var unit = normal.unit();
        return new Plane(unit, unit.dot(point));
    }

    @Override
    public double distance(Vec3 point) {
        return normal.dot(point) - offset;
    }

    @Override
    public Vec3 normal(Vec3 point) {
        return normal;
    }

    @Override
    public boolean isSame(Surface other) {
        return other instanceof Plane plane
                && normal.minus(plane.normal).length() < PARALLEL
                && Grid.same(offset, plane.offset);
    }
}
