package org.standwright.solid.mesh.face;

/** Cuts the faces of one plane into triangles, without a new corner. */
public final class Triangles {
    private final Corners corners;

    private Triangles(Corners corners) {
        this.corners = corners;
    }

    /**
     * Three corners to each triangle, counter-clockwise, every one with an area. Throws {@link BrokenFaceException} if
     * loops cross; they may touch in corners.
     */
    public static int[] of(Corners corners) {
        var triangles = new Triangles(corners);
        if (corners.count() == 3 && triangles.isLeft(0, 1, 2)) {
            return new int[] {0, 1, 2};
        }
        return corners.count() == 4 && corners.endOfLoop(0) == 4 ? triangles.ofQuadrangle() : Sweep.triangles(corners);
    }

    /** Most faces are walls of four corners; no sweep is needed if one of the diagonals runs inside. */
    private int[] ofQuadrangle() {
        if (isLeft(0, 1, 2) && isLeft(2, 3, 0)) {
            return new int[] {0, 1, 2, 2, 3, 0};
        }
        if (isLeft(1, 2, 3) && isLeft(3, 0, 1)) {
            return new int[] {1, 2, 3, 3, 0, 1};
        }
        return Sweep.triangles(corners);
    }

    private boolean isLeft(int a, int b, int c) {
        return corners.turn(a, b, c) > 0;
    }
}
