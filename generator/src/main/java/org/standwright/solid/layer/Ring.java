package org.standwright.solid.layer;

import java.util.Arrays;

/** A closed polygon in a plane on the 1/1024 mm grid, counter-clockwise, the first corner not repeated. */
public final class Ring {
    private final int[] uv;
    private final int minU;
    private final int minV;
    private final int maxU;
    private final int maxV;

    /** @param uv u and v of each corner in turn */
    public Ring(int... uv) {
        this.uv = uv;
        int lowU = Integer.MAX_VALUE;
        int lowV = Integer.MAX_VALUE;
        int highU = Integer.MIN_VALUE;
        int highV = Integer.MIN_VALUE;
        for (int i = 0; i < uv.length; i += 2) {
            lowU = Math.min(lowU, uv[i]);
            lowV = Math.min(lowV, uv[i + 1]);
            highU = Math.max(highU, uv[i]);
            highV = Math.max(highV, uv[i + 1]);
        }
        minU = lowU;
        minV = lowV;
        maxU = highU;
        maxV = highV;
    }

    public static Ring rectangle(int u0, int v0, int u1, int v1) {
        return new Ring(u0, v0, u1, v0, u1, v1, u0, v1);
    }

    /** Through points told in either sense. */
    public static Ring turnedLeft(int[] u, int[] v) {
        int n = u.length;
        var there = new int[2 * n];
        var back = new int[2 * n];
        for (int i = 0; i < n; i++) {
            there[2 * i] = u[i];
            there[2 * i + 1] = v[i];
            back[2 * i] = u[n - 1 - i];
            back[2 * i + 1] = v[n - 1 - i];
        }
        var ring = tidy(there);
        return ring.area() > 0 ? ring : tidy(back);
    }

    /** The same ring without those corners that {@link #tidy(int...)} leaves out. */
    public Ring tidied() {
        return tidy(uv);
    }

    /** The same corners without those that rounding has merged or put in a row; fewer than 3 when nothing is enclosed. */
    public static Ring tidy(int... uv) {
        var kept = Arrays.copyOf(uv, uv.length);
        int n = uv.length / 2;
        int since = 0;
        for (int i = 0; n > 2 && since < n; ) {
            if (turn(kept, (i + n - 1) % n, i, (i + 1) % n) != 0) {
                since++;
                i = (i + 1) % n;
            } else {
                System.arraycopy(kept, 2 * i + 2, kept, 2 * i, 2 * (n - i - 1));
                n--;
                since = 0;
                i = n == 0 ? 0 : (i + n - 1) % n;
            }
        }
        return new Ring(Arrays.copyOf(kept, 2 * n));
    }

    public int size() {
        return uv.length / 2;
    }

    public int u(int corner) {
        return uv[2 * corner];
    }

    public int v(int corner) {
        return uv[2 * corner + 1];
    }

    /** The corner after {@code corner}. */
    public int next(int corner) {
        return corner + 1 == size() ? 0 : corner + 1;
    }

    public int minU() {
        return minU;
    }

    public int minV() {
        return minV;
    }

    public int maxU() {
        return maxU;
    }

    public int maxV() {
        return maxV;
    }

    /** Whether the box around it lies all inside another ring and touches it nowhere. */
    public boolean isAmidst(Ring outline) {
        return minU > outline.minU
                && maxU < outline.maxU
                && minV > outline.minV
                && maxV < outline.maxV
                && (outline.isRectangle() || outline.surrounds(this));
    }

    private boolean surrounds(Ring other) {
        for (int i = 0; i < size(); i++) {
            if (other.isNearSide(this, i)) {
                return false;
            }
        }
        return isAround(other.minU, other.minV);
    }

    /** Whether a point that lies on no side is inside: a ray from it crosses an odd number of sides. */
    private boolean isAround(int u, int v) {
        boolean inside = false;
        for (int i = 0; i < size(); i++) {
            int next = next(i);
            if (v(i) > v != v(next) > v) {
                long turn = (long) (u(next) - u(i)) * (v - v(i)) - (long) (v(next) - v(i)) * (u - u(i));
                inside ^= turn > 0 == v(next) > v(i);
            }
        }
        return inside;
    }

    /** Whether the boxes around the two share a point. */
    boolean isNear(Ring other) {
        return minU <= other.maxU && other.minU <= maxU && minV <= other.maxV && other.minV <= maxV;
    }

    /** Whether the box around it and that around a side of another share a point. */
    boolean isNearSide(Ring other, int side) {
        int next = other.next(side);
        return Math.max(other.u(side), other.u(next)) >= minU
                && Math.min(other.u(side), other.u(next)) <= maxU
                && Math.max(other.v(side), other.v(next)) >= minV
                && Math.min(other.v(side), other.v(next)) <= maxV;
    }

    /** Whether it encloses an area. */
    public boolean isSomething() {
        return size() > 2 && area() > 0;
    }

    /** In square grid units. */
    public double area() {
        long twice = 0;
        for (int i = 0; i < size(); i++) {
            twice += (long) u(i) * v(next(i)) - (long) u(next(i)) * v(i);
        }
        return twice / 2.0;
    }

    public boolean isRectangle() {
        return size() == 4 && area() == (double) (maxU - minU) * (maxV - minV);
    }

    public boolean isConvex() {
        for (int i = 0; i < size(); i++) {
            if (turn(uv, i, next(i), next(next(i))) <= 0) {
                return false;
            }
        }
        return true;
    }

    /** Twice the area of the triangle of three corners, more than 0 when it turns left. */
    private static long turn(int[] uv, int a, int b, int c) {
        long abU = uv[2 * b] - uv[2 * a];
        long abV = uv[2 * b + 1] - uv[2 * a + 1];
        long bcU = uv[2 * c] - uv[2 * b];
        long bcV = uv[2 * c + 1] - uv[2 * b + 1];
        return abU * bcV - abV * bcU;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Ring ring && Arrays.equals(uv, ring.uv);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(uv);
    }

    @Override
    public String toString() {
        return Arrays.toString(uv);
    }
}
