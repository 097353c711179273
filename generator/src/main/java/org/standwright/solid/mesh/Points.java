package org.standwright.solid.mesh;

import java.util.Arrays;

/** A growing list of points, numbered from 0; 1/1024 mm. Whole numbers of these are kept exactly. */
final class Points {
    /** What the kernel's coordinates may be off, 1/1024 mm. */
    private static final double NOISE = 1e-5;

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

    /** The nearest points of the grid under the same numbers; half-way goes up, even if a coordinate is just short of it. */
    Points rounded() {
        var rounded = new Points();
        for (int point = 0; point < count; point++) {
            rounded.add(rounded(x(point)), rounded(y(point)), rounded(z(point)));
        }
        return rounded;
    }

    private static double rounded(double coordinate) {
        return Math.floor(coordinate + 0.5 + NOISE);
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

    /** A coordinate of a point on the grid: x (0), y (1) or z (2). */
    int onGrid(int point, int axis) {
        return (int) xyz[3 * point + axis];
    }

    /** x, y and z of those points that have a number, which is where they go. */
    int[] onGrid(int[] numbers, int used) {
        var onGrid = new int[3 * used];
        for (int point = 0, from = 0; point < count; point++, from += 3) {
            if (numbers[point] >= 0) {
                int to = 3 * numbers[point];
                onGrid[to] = (int) xyz[from];
                onGrid[to + 1] = (int) xyz[from + 1];
                onGrid[to + 2] = (int) xyz[from + 2];
            }
        }
        return onGrid;
    }

    /** How far along the segment from {@code a} (0) to {@code b} (1) the foot of {@code p} lies. */
    double along(int a, int b, int p) {
        double dx = x(b) - x(a);
        double dy = y(b) - y(a);
        double dz = z(b) - z(a);
        return ((x(p) - x(a)) * dx + (y(p) - y(a)) * dy + (z(p) - z(a)) * dz) / (dx * dx + dy * dy + dz * dz);
    }

    /** Whether three points of the grid lie in one line. */
    boolean isInLine(int a, int b, int c) {
        return crossed(a, b, c, 0, 1) == 0 && crossed(a, b, c, 1, 2) == 0 && crossed(a, b, c, 2, 0) == 0;
    }

    private long crossed(int a, int b, int c, int one, int other) {
        long first = (long) (onGrid(b, one) - onGrid(a, one)) * (onGrid(c, other) - onGrid(a, other));
        return first - (long) (onGrid(b, other) - onGrid(a, other)) * (onGrid(c, one) - onGrid(a, one));
    }

    /** Whether {@code p} lies between {@code a} and {@code b}, at most {@code reach} off the line; exact for 0 on the grid. */
    boolean isBetween(int a, int b, int p, double reach) {
        double dx = x(b) - x(a);
        double dy = y(b) - y(a);
        double dz = z(b) - z(a);
        double px = x(p) - x(a);
        double py = y(p) - y(a);
        double pz = z(p) - z(a);
        double length2 = dx * dx + dy * dy + dz * dz;
        double dot = px * dx + py * dy + pz * dz;
        double cx = dy * pz - dz * py;
        double cy = dz * px - dx * pz;
        double cz = dx * py - dy * px;
        return dot > 0 && dot < length2 && cx * cx + cy * cy + cz * cz <= reach * reach * length2;
    }
}
