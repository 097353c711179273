package org.standwright.solid;

/** Exact answers for points on the grid, as long as coordinates differ by less than 2^25 units. */
final class Predicates {
    /** What rounding can add to a 3 x 3 determinant stays below this. */
    private static final double SURE = 0x1p30;

    private Predicates() {}

    /** On which side of the plane of a, b and c the point d lies: 1 where the normal points, -1 behind, 0 on it. */
    static int side(int[] a, int[] b, int[] c, int[] d) {
        long ux = (long) b[0] - a[0];
        long uy = (long) b[1] - a[1];
        long uz = (long) b[2] - a[2];
        long vx = (long) c[0] - a[0];
        long vy = (long) c[1] - a[1];
        long vz = (long) c[2] - a[2];
        long nx = uy * vz - uz * vy;
        long ny = uz * vx - ux * vz;
        long nz = ux * vy - uy * vx;
        long wx = (long) d[0] - a[0];
        long wy = (long) d[1] - a[1];
        long wz = (long) d[2] - a[2];
        double rough = (double) nx * wx + (double) ny * wy + (double) nz * wz;
        // so small a number comes out right even if terms of the sum overflow
        return Math.abs(rough) > SURE ? (int) Math.signum(rough) : Long.signum(nx * wx + ny * wy + nz * wz);
    }

    /** Which way a, b, c turn seen along an axis (0 x, 1 y, 2 z): 1 left, -1 right, 0 in a row. */
    static int turn(int[] a, int[] b, int[] c, int axis) {
        int u = (axis + 1) % 3;
        int v = (axis + 2) % 3;
        return Long.signum(((long) b[u] - a[u]) * ((long) c[v] - a[v]) - ((long) b[v] - a[v]) * ((long) c[u] - a[u]));
    }
}
