package org.standwright.solid;

import org.standwright.geom.Vec3;

/**
 * Weighs a mesh where it stands: a tetrahedron from the frame's origin to each triangle, above 0 where the triangle faces
 * away from the origin. The centroid of a tetrahedron is the mean of its corners; the integral of x·y over it is its volume
 * times (the sum of x·y over the corners + the product of the sums) / 20 (O. C. Zienkiewicz's finite element text, from
 * memory).
 */
final class Tetrahedra {
    private double mass;
    private final double[] moment = new double[3];
    private final double[][] second = new double[3][3];

    void add(Solid solid, double density) {
        for (int t = 0; t < solid.triangleCount(); t++) {
            add(
                    array(solid.vertex(solid.corner(t, 0))),
                    array(solid.vertex(solid.corner(t, 1))),
                    array(solid.vertex(solid.corner(t, 2))),
                    density * 1e-9);
        }
    }

    private void add(double[] a, double[] b, double[] c, double density) {
        double mass = density
                * (a[0] * (b[1] * c[2] - b[2] * c[1])
                        + a[1] * (b[2] * c[0] - b[0] * c[2])
                        + a[2] * (b[0] * c[1] - b[1] * c[0]))
                / 6;
        this.mass += mass;
        for (int i = 0; i < 3; i++) {
            moment[i] += mass * (a[i] + b[i] + c[i]) / 4;
            for (int j = 0; j < 3; j++) {
                double corners = a[i] * a[j] + b[i] * b[j] + c[i] * c[j];
                second[i][j] += mass * (corners + (a[i] + b[i] + c[i]) * (a[j] + b[j] + c[j])) / 20;
            }
        }
    }

    Bodies bodies() {
        double trace = second[0][0] + second[1][1] + second[2][2];
        var tensor = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                tensor[i][j] = (i == j ? trace : 0) - second[i][j];
            }
        }
        return new Bodies(mass, moment, tensor);
    }

    private static double[] array(Vec3 v) {
        return new double[] {v.x(), v.y(), v.z()};
    }
}
