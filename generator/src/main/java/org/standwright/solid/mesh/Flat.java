package org.standwright.solid.mesh;

/**
 * One plane seen square on from outside along the axis nearest to its normal: grid points as exact integers (u, v),
 * counter-clockwise where the solid's surface is.
 */
final class Flat {
    private final Points points;
    private final int uAxis;
    private final int vAxis;

    Flat(Planes planes, int plane, Points points) {
        this.points = points;
        int dropped = steepest(planes, plane);
        boolean mirrored = planes.normal(plane, dropped) < 0;
        uAxis = (dropped + (mirrored ? 2 : 1)) % 3;
        vAxis = (dropped + (mirrored ? 1 : 2)) % 3;
    }

    private static int steepest(Planes planes, int plane) {
        long ax = Math.abs(planes.normal(plane, 0));
        long ay = Math.abs(planes.normal(plane, 1));
        long az = Math.abs(planes.normal(plane, 2));
        return az >= ax && az >= ay ? 2 : ax >= ay ? 0 : 1;
    }

    int u(int point) {
        return points.onGrid(point, uAxis);
    }

    int v(int point) {
        return points.onGrid(point, vAxis);
    }

    /** Twice the area of the triangle, more than 0 when it turns left. */
    long turn(int a, int b, int c) {
        return (long) (u(b) - u(a)) * (v(c) - v(a)) - (long) (v(b) - v(a)) * (u(c) - u(a));
    }

    /** Whether direction {@code b} comes before {@code c} when turning clockwise from direction {@code a}, all from o. */
    boolean isSooner(int o, int a, int b, int c) {
        boolean bFar = isFar(o, a, b);
        boolean cFar = isFar(o, a, c);
        return bFar != cFar ? cFar : turn(o, b, c) < 0;
    }

    /** Whether direction {@code b} is half a turn or more clockwise from direction {@code a}; no turn counts as a whole. */
    private boolean isFar(int o, int a, int b) {
        return turn(o, a, b) >= 0;
    }
}
