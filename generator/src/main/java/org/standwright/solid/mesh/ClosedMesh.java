package org.standwright.solid.mesh;

import java.util.List;

/** From the pieces that cutting leaves of a solid's faces to the mesh of its surface. */
public final class ClosedMesh {
    /** A corner this close to an edge lies on it: 1e-5 mm, in 1/1024 mm. */
    private static final double SAME = 0.01;
    /** How far off the line between its neighbours a point is that edges go straight on at, 1/1024 mm. */
    private static final double STRAIGHT = 0.1;

    /** What the kernel's coordinates may be off, 1/1024 mm. */
    private static final double NOISE = 1e-5;

    private ClosedMesh() {}

    /**
     * The closed mesh, checked, of faces in pieces that together bound a solid but need not meet corner to corner.
     * Throws {@link BrokenMeshException} when rounding to the grid has spoilt them.
     *
     * @param planes that the numbers in {@code pieces} come from
     */
    public static Mesh of(List<Facet> pieces, Planes planes) {
        var shell = new Shell(planes);
        add(pieces, shell);
        shell.mend();
        return shell.closed();
    }

    /** Adds what pieces change in a surface to the shell that has the rest of it. */
    public static void patch(List<Facet> pieces, Shell shell) {
        add(pieces, shell);
        shell.mendPatched();
    }

    private static void add(List<Facet> pieces, Shell shell) {
        var welder = new Welder();
        var edges = boundaries(pieces, welder);
        var points = welder.points();
        var broken = TJunctions.broken(EdgeSum.of(edges, points.count()), points, SAME);
        var faces = EdgeSum.of(broken, points.count());
        snap(StraightRuns.joined(faces, points, STRAIGHT, new boolean[points.count()]), points, shell);
    }

    private static Edges boundaries(List<Facet> pieces, Welder welder) {
        var edges = new Edges(256);
        for (var piece : pieces) {
            var xyz = piece.xyz();
            int last = piece.corners() - 1;
            int from = welder.number(xyz[3 * last], xyz[3 * last + 1], xyz[3 * last + 2]);
            for (int i = 0; i <= last; i++) {
                int to = welder.number(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
                edges.add(piece.plane(), from, to);
                from = to;
            }
        }
        return edges;
    }

    /** Adds edges to {@code shell} with their ends at the nearest points of the grid. */
    private static void snap(Edges edges, Points points, Shell shell) {
        var numbers = new int[points.count()];
        for (int point = 0; point < numbers.length; point++) {
            numbers[point] = shell.point(snap(points.x(point)), snap(points.y(point)), snap(points.z(point)));
        }
        for (int edge = 0; edge < edges.count(); edge++) {
            shell.edge(edges.plane(edge), numbers[edges.from(edge)], numbers[edges.to(edge)]);
        }
    }

    /** Half-way goes up even if the kernel is a little short of it. */
    private static int snap(double coordinate) {
        return (int) Math.floor(coordinate + 0.5 + NOISE);
    }
}
