package org.standwright.solid.mesh;

import org.standwright.solid.mesh.face.BrokenFaceException;
import org.standwright.solid.mesh.face.Corners;
import org.standwright.solid.mesh.face.Triangles;

/** Cuts the faces on one plane after the other into triangles. */
final class Faces {
    private final Edges edges;
    private final Points points;
    private final Planes planes;
    private Loops loops;
    private final Corners corners = new Corners();
    private final Ints triangles;

    private Faces(Edges edges, Points points, Planes planes, Ints triangles) {
        this.edges = edges;
        this.points = points;
        this.planes = planes;
        loops = new Loops(edges, points.count());
        this.triangles = triangles;
    }

    /** Three points to each triangle. The edges are sorted by plane. */
    static Ints cut(Edges edges, Points points, Planes planes) {
        var faces = new Faces(edges, points, planes, new Ints(Math.max(12, 2 * edges.count())));
        try {
            faces.cutAll();
        } catch (BrokenFaceException e) {
            throw new BrokenMeshException(e.getMessage());
        }
        return faces.triangles;
    }

    private void cutAll() {
        for (int start = 0; start < edges.count(); ) {
            int end = edges.endOfPlane(start);
            cut(start, end);
            start = end;
        }
    }

    private void cut(int start, int end) {
        var flat = new Flat(planes, edges.plane(start), points);
        try {
            cut(start, end, flat, loops);
        } catch (BrokenFaceException | BrokenMeshException e) {
            loops = new Loops(edges, points.count());
            var rest = new Faces(
                    Spikes.cut(edges.between(start, end), flat, points, triangles), points, planes, triangles);
            if (rest.edges.count() == end - start) {
                throw e;
            }
            rest.cut(0, rest.edges.count(), flat, rest.loops);
        }
    }

    private void cut(int start, int end, Flat flat, Loops loops) {
        corners.clear();
        loops.trace(start, end, flat, corners);
        for (int corner : Triangles.of(corners)) {
            triangles.add(corners.point(corner));
        }
    }
}
