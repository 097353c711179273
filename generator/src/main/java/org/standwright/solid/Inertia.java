package org.standwright.solid;

import java.util.function.ToDoubleFunction;
import org.standwright.assembly.Placement;
import org.standwright.geom.Vec3;

/**
 * How a body resists turning about a point, kg·mm²: moments about the three axes, and products, which are 0 where the
 * body is the same on both sides. The tensor has the moments on its diagonal and the products, negative, beside it.
 *
 * @param xx the integral of y² + z² over the mass
 * @param yy of z² + x²
 * @param zz of x² + y²
 * @param xy of x·y
 * @param yz of y·z
 * @param zx of z·x
 */
public record Inertia(double xx, double yy, double zz, double xy, double yz, double zx) {
    public static final Inertia ZERO = new Inertia(0, 0, 0, 0, 0, 0);

    /** Of a mass in one point, kg, from which {@code arm} leads to the point it turns about. */
    static Inertia of(double mass, Vec3 arm) {
        double x = arm.x();
        double y = arm.y();
        double z = arm.z();
        return new Inertia(
                mass * (y * y + z * z),
                mass * (z * z + x * x),
                mass * (x * x + y * y),
                mass * x * y,
                mass * y * z,
                mass * z * x);
    }

    /** Of two bodies about one point. */
    public Inertia plus(Inertia other) {
        return new Inertia(xx + other.xx, yy + other.yy, zz + other.zz, xy + other.xy, yz + other.yz, zx + other.zx);
    }

    /** About the same point of the body, along the axes of the frame that {@code placement} turns it into. */
    Inertia turned(Placement placement) {
        var x = row(placement, Vec3::x);
        var y = row(placement, Vec3::y);
        var z = row(placement, Vec3::z);
        return new Inertia(between(x, x), between(y, y), between(z, z), -between(x, y), -between(y, z), -between(z, x));
    }

    /** An axis of the new frame in the body's own. */
    private static Vec3 row(Placement placement, ToDoubleFunction<Vec3> component) {
        return new Vec3(
                component.applyAsDouble(placement.along().unit()),
                component.applyAsDouble(placement.across().unit()),
                component.applyAsDouble(placement.through().unit()));
    }

    /** The tensor's component for two directions. */
    private double between(Vec3 a, Vec3 b) {
        return xx * a.x() * b.x()
                + yy * a.y() * b.y()
                + zz * a.z() * b.z()
                - xy * (a.x() * b.y() + a.y() * b.x())
                - yz * (a.y() * b.z() + a.z() * b.y())
                - zx * (a.z() * b.x() + a.x() * b.z());
    }
}
