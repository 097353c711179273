package org.standwright.solid.mesh;

/** Cuts the faces on one plane after the other into triangles. */
final class Faces {
    private final Edges edges;
    private final Points points;
    private final Planes planes;
    private final Loops loops;
    private final Corners corners = new Corners();
    private final Ints triangles;

    private Faces(Edges edges, Points points, Planes planes) {
        this.edges = edges;
        this.points = points;
        this.planes = planes;
        loops = new Loops(edges, points.count());
        triangles = new Ints(Math.max(12, 4 * edges.count()));
    }

    /** Three points to each triangle. The edges are sorted by plane. */
    static Ints cut(Edges edges, Points points, Planes planes) {
        var faces = new Faces(edges, points, planes);
        for (int start = 0; start < edges.count(); ) {
            int end = edges.endOfPlane(start);
            faces.cut(start, end);
            start = end;
        }
        return faces.triangles;
    }

    private void cut(int start, int end) {
        var flat = new Flat(planes, edges.plane(start), points);
        corners.begin(flat);
        loops.trace(start, end, flat, corners);
        if (!isTriangle() && !isQuadrangle()) {
            Sweep.cut(corners, triangles);
        }
    }

    private boolean isTriangle() {
        return corners.count() == 3 && add(0, 1, 2);
    }

    /** Most faces are walls of four corners; no sweep is needed if one of the diagonals runs inside. */
    private boolean isQuadrangle() {
        return corners.count() == 4
                && corners.loops() == 1
                && (isLeft(0, 1, 2) && isLeft(2, 3, 0) && add(0, 1, 2) && add(2, 3, 0)
                        || isLeft(1, 2, 3) && isLeft(3, 0, 1) && add(1, 2, 3) && add(3, 0, 1));
    }

    private boolean isLeft(int a, int b, int c) {
        return corners.turn(a, b, c) > 0;
    }

    private boolean add(int a, int b, int c) {
        if (!isLeft(a, b, c)) {
            return false;
        }
        triangles.add(corners.point(a));
        triangles.add(corners.point(b));
        triangles.add(corners.point(c));
        return true;
    }
}
