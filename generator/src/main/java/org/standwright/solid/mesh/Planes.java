package org.standwright.solid.mesh;

/** The oriented planes that the faces of one solid lie on, numbered as they come: equal planes, equal numbers. */
public final class Planes {
    /**
     * All points p with normal · p = offset; the normal points out of the solid and has no common divisor.
     *
     * @param offset in 1/1024 mm times the normal's length
     */
    public record Plane(long nx, long ny, long nz, long offset) {
        /** At a height, facing up (1) or down (-1). */
        public static Plane level(int z, int side) {
            return new Plane(0, 0, side, (long) side * z);
        }

        /** Upright, through two points seen from above, facing to the right of the way from the first to the second. */
        public static Plane upright(int x0, int y0, int x1, int y1) {
            long dx = (long) x1 - x0;
            long dy = (long) y1 - y0;
            long divisor = commonDivisor(Math.abs(dx), Math.abs(dy));
            long nx = dy / divisor;
            long ny = -dx / divisor;
            return new Plane(nx, ny, 0, nx * x0 + ny * y0);
        }

        /** Through three points near each other that turn left seen from the side that it faces. */
        public static Plane through(int[] a, int[] b, int[] c) {
            long ux = b[0] - a[0];
            long uy = b[1] - a[1];
            long uz = b[2] - a[2];
            long vx = c[0] - a[0];
            long vy = c[1] - a[1];
            long vz = c[2] - a[2];
            long nx = uy * vz - uz * vy;
            long ny = uz * vx - ux * vz;
            long nz = ux * vy - uy * vx;
            long divisor = commonDivisor(commonDivisor(Math.abs(nx), Math.abs(ny)), Math.abs(nz));
            return new Plane(
                    nx / divisor,
                    ny / divisor,
                    nz / divisor,
                    nx / divisor * a[0] + ny / divisor * a[1] + nz / divisor * a[2]);
        }

        private static long commonDivisor(long a, long b) {
            return b == 0 ? a : commonDivisor(b, a % b);
        }

        /** The same points, seen from the other side. */
        public Plane turned() {
            return new Plane(-nx, -ny, -nz, -offset);
        }
    }

    private final Quadruples planes = new Quadruples();

    /** The number of a plane, a new one if it has none yet. */
    public int number(Plane plane) {
        return planes.number(plane.nx, plane.ny, plane.nz, plane.offset);
    }

    /** A coordinate of a plane's normal: x (0), y (1) or z (2). */
    long normal(int plane, int axis) {
        return planes.member(plane, axis);
    }
}
