package org.standwright.solid;

import org.standwright.geom.Vec3;

/**
 * Volume and moments of what a closed mesh encloses, summed triangle by triangle about a point near it. By the divergence
 * theorem a volume integral is one over the surface: B. Mirtich, 'Fast and accurate computation of polyhedral mass
 * properties', Journal of Graphics Tools 1(2), 1996; the sums over a triangle as in D. Eberly, 'Polyhedral mass
 * properties (revisited)', Geometric Tools, 2002.
 */
final class VolumeIntegrals {
    private static final double CUBIC_METRES = 1e-9;

    private final Vec3 about;
    private double volume;
    private double x;
    private double y;
    private double z;
    private double xx;
    private double yy;
    private double zz;
    private double xy;
    private double yz;
    private double zx;

    /** @param about the point that coordinates are counted from, mm */
    VolumeIntegrals(Vec3 about) {
        this.about = about;
    }

    /** Takes in a triangle, counter-clockwise seen from outside: the three corners' x, y and z from the point, mm. */
    void add(double[] cornersX, double[] cornersY, double[] cornersZ) {
        double normalX = cross(cornersY, cornersZ);
        double normalY = cross(cornersZ, cornersX);
        double normalZ = cross(cornersX, cornersY);
        volume += normalX * sum(cornersX);
        x += normalX * squares(cornersX);
        y += normalY * squares(cornersY);
        z += normalZ * squares(cornersZ);
        xx += normalX * cubes(cornersX);
        yy += normalY * cubes(cornersY);
        zz += normalZ * cubes(cornersZ);
        xy += normalX * mixed(cornersX, cornersY);
        yz += normalY * mixed(cornersY, cornersZ);
        zx += normalZ * mixed(cornersZ, cornersX);
    }

    /** mm³. */
    double volume() {
        return volume / 6;
    }

    /** The centre of the volume, mm. */
    Vec3 centroid() {
        return about.plus(arm());
    }

    /** @param density kg/m³ */
    MassProperties massProperties(double density) {
        double kilograms = density * CUBIC_METRES; // in a mm³
        double mass = kilograms * volume();
        var arm = arm();
        double alongX = kilograms * xx / 60 - mass * arm.x() * arm.x();
        double alongY = kilograms * yy / 60 - mass * arm.y() * arm.y();
        double alongZ = kilograms * zz / 60 - mass * arm.z() * arm.z();
        return new MassProperties(
                mass,
                about.plus(arm),
                new Inertia(
                        alongY + alongZ,
                        alongZ + alongX,
                        alongX + alongY,
                        kilograms * xy / 120 - mass * arm.x() * arm.y(),
                        kilograms * yz / 120 - mass * arm.y() * arm.z(),
                        kilograms * zx / 120 - mass * arm.z() * arm.x()));
    }

    /** From the point to the centroid. */
    private Vec3 arm() {
        return new Vec3(x, y, z).times(1 / (4 * volume));
    }

    /** One component of the triangle's normal, twice its area long. */
    private static double cross(double[] u, double[] v) {
        return (u[1] - u[0]) * (v[2] - v[0]) - (v[1] - v[0]) * (u[2] - u[0]);
    }

    private static double sum(double[] w) {
        return w[0] + w[1] + w[2];
    }

    /** The sum of all products of two corners' coordinates. */
    private static double squares(double[] w) {
        return w[0] * w[0] + w[1] * (w[0] + w[1]) + w[2] * sum(w);
    }

    /** The sum of all products of three corners' coordinates. */
    private static double cubes(double[] w) {
        double ofTwo = w[0] * w[0] + w[1] * (w[0] + w[1]);
        return w[0] * w[0] * w[0] + w[1] * ofTwo + w[2] * squares(w);
    }

    private static double mixed(double[] w, double[] v) {
        double sum = sum(w);
        double squares = squares(w);
        return v[0] * (squares + w[0] * (sum + w[0]))
                + v[1] * (squares + w[1] * (sum + w[1]))
                + v[2] * (squares + w[2] * (sum + w[2]));
    }
}
