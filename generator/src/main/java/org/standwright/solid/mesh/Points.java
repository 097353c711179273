package org.standwright.solid.mesh;

import java.util.Arrays;

/** A growing list of points, numbered from 0; 1/1024 mm. */
final class Points {
    private double[] xyz = new double[3 * 64];
    private int count;

    int add(double x, double y, double z) {
        if (3 * count == xyz.length) {
            xyz = Arrays.copyOf(xyz, 2 * xyz.length);
        }
        xyz[3 * count] = x;
        xyz[3 * count + 1] = y;
        xyz[3 * count + 2] = z;
        return count++;
    }

    int count() {
        return count;
    }

    double x(int point) {
        return xyz[3 * point];
    }

    double y(int point) {
        return xyz[3 * point + 1];
    }

    double z(int point) {
        return xyz[3 * point + 2];
    }

    /** How far along the segment from {@code a} (0) to {@code b} (1) the foot of {@code p} lies. */
    double along(int a, int b, int p) {
        double dx = x(b) - x(a);
        double dy = y(b) - y(a);
        double dz = z(b) - z(a);
        return ((x(p) - x(a)) * dx + (y(p) - y(a)) * dy + (z(p) - z(a)) * dz) / (dx * dx + dy * dy + dz * dz);
    }

    /** Distance of {@code p} from the point at {@code along} on the segment from {@code a} to {@code b}. */
    double off(int a, int b, double along, int p) {
        double x = x(a) + along * (x(b) - x(a)) - x(p);
        double y = y(a) + along * (y(b) - y(a)) - y(p);
        double z = z(a) + along * (z(b) - z(a)) - z(p);
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** x, y, z of all points as grid units, for points that lie on the grid. */
    int[] onGrid() {
        return Arrays.stream(xyz, 0, 3 * count).mapToInt(value -> (int) value).toArray();
    }
}
