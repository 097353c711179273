package org.standwright.solid.mesh;

/**
 * A convex piece of a face, as cutting leaves it.
 *
 * @param plane number of the plane that it lies on
 * @param xyz its corners in turn, counter-clockwise from outside, in 1/1024 mm, not yet on the grid
 */
public record Facet(int plane, double[] xyz) {
    int corners() {
        return xyz.length / 3;
    }
}
