package org.standwright.check.wall.statics;

/** Three forces of unknown size on a body in a plane, from its equilibrium about any point, by Cramer's rule. */
final class FreeBody {
    private FreeBody() {}

    /** A force along (x, z) acting at (atX, atZ). */
    record Line(double x, double z, double atX, double atZ) {
        double[] column() {
            return new double[] {x, z, atX * z - atZ * x};
        }

        Line times(double size) {
            return new Line(x * size, z * size, atX, atZ);
        }
    }

    /** The sizes of the three with which they balance the load. */
    static double[] balance(Line one, Line two, Line three, Line load) {
        double[] a = one.column();
        double[] b = two.column();
        double[] c = three.column();
        double[] r = load.times(-1).column();
        double all = determinant(a, b, c);
        return new double[] {determinant(r, b, c) / all, determinant(a, r, c) / all, determinant(a, b, r) / all};
    }

    private static double determinant(double[] a, double[] b, double[] c) {
        return a[0] * (b[1] * c[2] - c[1] * b[2])
                - b[0] * (a[1] * c[2] - c[1] * a[2])
                + c[0] * (a[1] * b[2] - b[1] * a[2]);
    }
}
