package org.standwright.solid.exact;

import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** The wall of a hole or of a pocket's rounded corner. */
public record Cylinder(Vec3 point, Vec3 axis, double radius) implements Round {
    @Override
    public double radiusAt(double height) {
        return radius;
    }

    @Override
    public double distance(Vec3 at) {
        return arm(at).length() - radius;
    }

    @Override
    public Vec3 normal(Vec3 at) {
        return arm(at).unit();
    }

    @Override
    public boolean isSame(Surface other) {
        return other instanceof Cylinder cylinder && isCoaxial(cylinder) && Grid.same(radius, cylinder.radius);
    }
}
