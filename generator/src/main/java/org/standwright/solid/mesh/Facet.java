package org.standwright.solid.mesh;

/**
 * A convex piece of a face, as cutting leaves it.
 *
 * @param plane number of the plane that it lies on
 * @param xyz its corners in turn, counter-clockwise from outside, in 1/1024 mm, not yet on the grid
 */
public record Facet(int plane, double[] xyz) {
    /** What cancels it: the same piece run round the other way on the same plane. */
    public Facet turned() {
        var turned = new double[xyz.length];
        for (int i = 0; i < xyz.length; i += 3) {
            System.arraycopy(xyz, i, turned, xyz.length - 3 - i, 3);
        }
        return new Facet(plane, turned);
    }

    int corners() {
        return xyz.length / 3;
    }
}
