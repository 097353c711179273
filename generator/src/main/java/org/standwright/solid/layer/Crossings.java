package org.standwright.solid.layer;

import java.util.List;

/** Finds the spots at which rings meet: their corners, and the grid points nearest to where their sides cross. */
final class Crossings {
    private final Spots spots;

    private Crossings(Spots spots) {
        this.spots = spots;
    }

    static Spots of(List<Ring> rings) {
        var crossings = new Crossings(new Spots());
        for (var ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                crossings.spots.at(ring.u(i), ring.v(i));
            }
        }
        for (int i = 0; i < rings.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (rings.get(i).isNear(rings.get(j))) {
                    crossings.cross(rings.get(i), rings.get(j));
                }
            }
        }
        return crossings.spots;
    }

    private void cross(Ring one, Ring other) {
        for (int i = 0; i < one.size(); i++) {
            if (other.isNearSide(one, i)) {
                crossSide(one, i, other);
            }
        }
    }

    private void crossSide(Ring one, int i, Ring other) {
        int next = one.next(i);
        int lowX = Math.min(one.u(i), one.u(next));
        int highX = Math.max(one.u(i), one.u(next));
        int lowY = Math.min(one.v(i), one.v(next));
        int highY = Math.max(one.v(i), one.v(next));
        for (int j = 0, after = 1; j < other.size(); j++, after = other.next(after)) {
            boolean near = Math.max(other.u(j), other.u(after)) >= lowX
                    && Math.min(other.u(j), other.u(after)) <= highX
                    && Math.max(other.v(j), other.v(after)) >= lowY
                    && Math.min(other.v(j), other.v(after)) <= highY;
            if (near) {
                crossSides(one, i, other, j);
            }
        }
    }

    /** Where two sides cross between their ends; ends on sides are spots already. */
    private void crossSides(Ring one, int i, Ring other, int j) {
        int ax = one.u(i);
        int ay = one.v(i);
        long dx = one.u(one.next(i)) - ax;
        long dy = one.v(one.next(i)) - ay;
        long before = dx * (other.v(j) - ay) - dy * (other.u(j) - ax);
        int k = other.next(j);
        long after = dx * (other.v(k) - ay) - dy * (other.u(k) - ax);
        if (!(before < 0 && after > 0 || before > 0 && after < 0)) {
            return;
        }
        long ex = other.u(k) - other.u(j);
        long ey = other.v(k) - other.v(j);
        long start = ex * (ay - other.v(j)) - ey * (ax - other.u(j));
        long end = start + ex * dy - ey * dx;
        if (start < 0 && end > 0 || start > 0 && end < 0) {
            spots.at(ax + nearest(start, dx, start - end), ay + nearest(start, dy, start - end));
        }
    }

    /**
     * The whole number nearest to a share of a length; half-way goes up, as {@link Passing} has it. The product may
     * overflow, but what is left of it after division does not, so the remainder is exact.
     */
    private static int nearest(long share, long length, long whole) {
        long part = whole > 0 ? share : -share;
        long all = Math.abs(whole);
        long near = Math.round((double) part / all * length);
        long rest = 2 * part * length + all - 2 * all * near;
        if (rest < 0) {
            near--;
        } else if (rest >= 2 * all) {
            near++;
        }
        return (int) near;
    }
}
