package org.standwright.solid;

import org.standwright.solid.mesh.Planes.Plane;

/**
 * Which way a prism reaches. Looking against that way, its outline runs counter-clockwise in (u, v) and w comes towards
 * the eye; the axes change places in a ring, so that frames stay right-handed and low stays low.
 */
enum Direction {
    /** (u, v, w) = (x, y, z). */
    UP,
    /** (u, v, w) = (y, z, x). */
    ALONG_X,
    /** (u, v, w) = (z, x, y). */
    ALONG_Y;

    /** x, y and z of a point. */
    int[] xyz(int u, int v, int w) {
        return switch (this) {
            case UP -> new int[] {u, v, w};
            case ALONG_X -> new int[] {w, u, v};
            case ALONG_Y -> new int[] {v, w, u};
        };
    }

    /** A plane told in (u, v, w). */
    Plane inSpace(Plane plane) {
        return switch (this) {
            case UP -> plane;
            case ALONG_X -> new Plane(plane.nz(), plane.nx(), plane.ny(), plane.offset());
            case ALONG_Y -> new Plane(plane.ny(), plane.nz(), plane.nx(), plane.offset());
        };
    }

    /** A box told in (u, v, w), as its x, y and z. */
    Extent inSpace(Extent box) {
        var low = xyz(box.x0(), box.y0(), box.z0());
        var high = xyz(box.x1(), box.y1(), box.z1());
        return new Extent(low[0], low[1], low[2], high[0], high[1], high[2]);
    }

    /** A box told in x, y and z, as its (u, v, w). */
    Extent seen(Extent box) {
        return switch (this) {
            case UP -> box;
            case ALONG_X -> ALONG_Y.inSpace(box);
            case ALONG_Y -> ALONG_X.inSpace(box);
        };
    }
}
