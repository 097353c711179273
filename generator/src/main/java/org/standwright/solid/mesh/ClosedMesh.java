package org.standwright.solid.mesh;

import java.util.List;

/** From the pieces that cutting leaves of a solid's faces to the mesh of its surface. */
public final class ClosedMesh {
    /** A corner this close to an edge lies on it: 1e-5 mm, in 1/1024 mm. */
    private static final double SAME = 0.01;
    /** How far off the line between its neighbours a point is that edges go straight on at, 1/1024 mm. */
    private static final double STRAIGHT = 0.1;

    private ClosedMesh() {}

    /**
     * The closed mesh, checked, of faces in pieces that together bound a solid but need not meet corner to corner.
     * Throws {@link BrokenMeshException} when rounding to the grid has spoilt them.
     *
     * @param planes that the numbers in {@code pieces} come from
     */
    public static Mesh of(List<Facet> pieces, Planes planes) {
        var welder = new Welder();
        var edges = boundaries(pieces, welder);
        var grid = welder.points().rounded();
        var shell = new Shell(planes);
        for (int point = 0; point < grid.count(); point++) {
            shell.point(grid.onGrid(point, 0), grid.onGrid(point, 1), grid.onGrid(point, 2));
        }
        add(edges, 0, shell);
        return shell.closed();
    }

    /** Adds what pieces change in a surface to the shell that has the rest of it. */
    public static void patch(List<Facet> pieces, Shell shell) {
        var welder = new Welder();
        var edges = boundaries(pieces, welder);
        var points = welder.points();
        int first = shell.pointCount();
        for (int point = 0; point < points.count(); point++) {
            shell.loose(points.x(point), points.y(point), points.z(point));
        }
        add(edges, first, shell);
    }

    private static void add(Edges edges, int first, Shell shell) {
        for (int edge = 0; edge < edges.count(); edge++) {
            shell.edge(edges.plane(edge), first + edges.from(edge), first + edges.to(edge));
        }
        shell.mend();
    }

    /** What does not cancel of the boundaries of pieces, broken where corners lie on it. */
    private static Edges boundaries(List<Facet> pieces, Welder welder) {
        var edges = new Edges(256);
        for (var piece : pieces) {
            add(piece, welder, edges);
        }
        var points = welder.points();
        var broken = TJunctions.broken(EdgeSum.of(edges, points.count()), points, SAME);
        var faces = EdgeSum.of(broken, points.count());
        return StraightRuns.joined(faces, points, STRAIGHT, new boolean[points.count()]);
    }

    private static void add(Facet piece, Welder welder, Edges edges) {
        var xyz = piece.xyz();
        int last = piece.corners() - 1;
        int from = welder.number(xyz[3 * last], xyz[3 * last + 1], xyz[3 * last + 2]);
        for (int i = 0; i <= last; i++) {
            int to = welder.number(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
            edges.add(piece.plane(), from, to);
            from = to;
        }
    }
}
