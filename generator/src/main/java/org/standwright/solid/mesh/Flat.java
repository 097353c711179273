package org.standwright.solid.mesh;

import org.standwright.solid.mesh.Planes.Plane;

/**
 * One plane seen square on from outside along the axis nearest to its normal: grid points as exact integers (u, v),
 * counter-clockwise where the solid's surface is.
 */
final class Flat {
    private final Points points;
    private final int dropped;
    private final boolean mirrored;

    Flat(Plane plane, Points points) {
        this.points = points;
        long ax = Math.abs(plane.nx());
        long ay = Math.abs(plane.ny());
        long az = Math.abs(plane.nz());
        dropped = az >= ax && az >= ay ? 2 : ax >= ay ? 0 : 1;
        mirrored = (dropped == 2 ? plane.nz() : dropped == 0 ? plane.nx() : plane.ny()) < 0;
    }

    long u(int point) {
        return (long) (mirrored ? second(point) : first(point));
    }

    long v(int point) {
        return (long) (mirrored ? first(point) : second(point));
    }

    private double first(int point) {
        return dropped == 2 ? points.x(point) : dropped == 0 ? points.y(point) : points.z(point);
    }

    private double second(int point) {
        return dropped == 2 ? points.y(point) : dropped == 0 ? points.z(point) : points.x(point);
    }

    /** Twice the area of the triangle, more than 0 when it turns left. */
    long turn(int a, int b, int c) {
        return (u(b) - u(a)) * (v(c) - v(a)) - (v(b) - v(a)) * (u(c) - u(a));
    }

    /** Order from left to right, then upwards. */
    int compare(int a, int b) {
        int byU = Long.compare(u(a), u(b));
        return byU != 0 ? byU : Long.compare(v(a), v(b));
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
