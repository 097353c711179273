package org.standwright.solid;

import org.standwright.geom.Vec3;

/**
 * Bodies that every mechanics handbook lists, added and taken away: all their moments are kept about the frame's origin,
 * where they simply add. Formulas as in the table of any handbook of mechanics (from memory): a box's m(b² + c²)/12, a
 * cylinder's m(3r² + h²)/12 and mr²/2, and the parallel axis theorem m(d²·1 - d·d').
 *
 * @param moment of mass, kg·mm
 * @param tensor of inertia about the origin, kg·mm²
 */
record Bodies(double mass, double[] moment, double[][] tensor) {

    static Bodies box(double density, Vec3 low, Vec3 high) {
        var size = high.minus(low);
        double a = size.x();
        double b = size.y();
        double c = size.z();
        double mass = density * 1e-9 * a * b * c;
        return about(mass, low.plus(size.times(0.5)), b * b + c * c, c * c + a * a, a * a + b * b, mass / 12);
    }

    /** Along axis 0, 1 or 2. */
    static Bodies cylinder(double density, int axis, Vec3 centre, double diameter, double height) {
        double r = diameter / 2;
        double mass = density * 1e-9 * Math.PI * r * r * height;
        var moments = new double[3];
        for (int i = 0; i < 3; i++) {
            moments[i] = i == axis ? mass * r * r / 2 : mass * (3 * r * r + height * height) / 12;
        }
        return about(mass, centre, moments[0], moments[1], moments[2], 1);
    }

    private static Bodies about(double mass, Vec3 centre, double xx, double yy, double zz, double factor) {
        var d = new double[] {centre.x(), centre.y(), centre.z()};
        var own = new double[] {xx * factor, yy * factor, zz * factor};
        var tensor = new double[3][3];
        double square = d[0] * d[0] + d[1] * d[1] + d[2] * d[2];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                tensor[i][j] = i == j ? own[i] + mass * (square - d[i] * d[i]) : -mass * d[i] * d[j];
            }
        }
        return new Bodies(mass, new double[] {mass * d[0], mass * d[1], mass * d[2]}, tensor);
    }

    /** The same moments from what the generator says. */
    static Bodies of(MassProperties known) {
        var bodies = about(known.mass(), known.centre(), 0, 0, 0, 1);
        var own = tensor(known.inertia());
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                bodies.tensor[i][j] += own[i][j];
            }
        }
        return bodies;
    }

    static double[][] tensor(Inertia own) {
        return new double[][] {
            {own.xx(), -own.xy(), -own.zx()},
            {-own.xy(), own.yy(), -own.yz()},
            {-own.zx(), -own.yz(), own.zz()}
        };
    }

    Bodies plus(Bodies other) {
        return combined(other, 1);
    }

    Bodies minus(Bodies other) {
        return combined(other, -1);
    }

    private Bodies combined(Bodies other, double sign) {
        var moments = new double[3];
        var sum = new double[3][3];
        for (int i = 0; i < 3; i++) {
            moments[i] = moment[i] + sign * other.moment[i];
            for (int j = 0; j < 3; j++) {
                sum[i][j] = tensor[i][j] + sign * other.tensor[i][j];
            }
        }
        return new Bodies(mass + sign * other.mass, moments, sum);
    }

    Vec3 centre() {
        return new Vec3(moment[0] / mass, moment[1] / mass, moment[2] / mass);
    }

    /** About the centre of mass, which the origin's tensor exceeds by that of a point mass there. */
    double[][] tensorAboutCentre() {
        return minus(about(mass, centre(), 0, 0, 0, 1)).tensor;
    }

    double trace() {
        return tensor[0][0] + tensor[1][1] + tensor[2][2];
    }
}
