package org.standwright.solid.exact;

import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/**
 * The flank of a countersink.
 *
 * @param axis the way that it widens
 * @param radius at {@code point}, mm
 * @param slope between its side and its axis, radians
 */
public record Cone(Vec3 point, Vec3 axis, double radius, double slope) implements Round {
    @Override
    public double radiusAt(double height) {
        return radius + height * StrictMath.tan(slope);
    }

    @Override
    public double distance(Vec3 at) {
        return (arm(at).length() - radiusAt(height(at))) * StrictMath.cos(slope);
    }

    @Override
    public Vec3 normal(Vec3 at) {
        return arm(at).unit().times(StrictMath.cos(slope)).minus(axis.times(StrictMath.sin(slope)));
    }

    @Override
    public boolean isSame(Surface other) {
        return other instanceof Cone cone
                && isCoaxial(cone)
                && axis.dot(cone.axis) > 0
                && Math.abs(slope - cone.slope) < PARALLEL
                && Grid.same(radiusAt(height(cone.point)), cone.radius);
    }
}
