package org.standwright.solid.mesh;

import java.util.OptionalDouble;

/** The surface of a solid while it is put together, piece by piece, on the 1/1024 mm grid. */
public final class Shell {
    private final Planes planes;
    private final Points points = new Points();
    private final Edges edges = new Edges(256);
    private final Edges rims = new Edges(16);
    private final Ints triangles = new Ints(256);
    private OptionalDouble mends = OptionalDouble.empty();

    /** @param planes that the numbers of planes come from */
    public Shell(Planes planes) {
        this.planes = planes;
    }

    /** A new point; the caller sees to it that one place gets one point (where faces meet). */
    public int point(int x, int y, int z) {
        return points.add(x, y, z);
    }

    /**
     * A directed piece of the boundary of the faces on a plane, faces to the left seen from outside. Opposite pieces of
     * one plane cancel.
     */
    public void edge(int plane, int from, int to) {
        edges.add(plane, from, to);
    }

    /**
     * A whole closed loop of such pieces that meets nothing else on its plane: the rim of a hole in the middle of a
     * face.
     */
    public void loop(int plane, int[] points) {
        int from = points[points.length - 1];
        for (int to : points) {
            rims.add(plane, from, to);
            from = to;
        }
    }

    /** A finished triangle, counter-clockwise seen from outside. */
    public void triangle(int a, int b, int c) {
        triangles.add(a);
        triangles.add(b);
        triangles.add(c);
    }

    /**
     * From now on pieces may meet in mid-edge, and in one place there may be several points. Without this call pieces
     * given by {@link #edge} meet corner to corner.
     */
    public void mend() {
        mends = OptionalDouble.of(Mending.HALF_A_STEP);
    }

    /** As {@link #mend}, when some corners were rounded away from edges that others have brought whole. */
    public void mendPatched() {
        mends = OptionalDouble.of(Mending.ROUNDED);
    }

    /** The closed mesh, checked. Throws {@link BrokenMeshException} if the pieces make none. */
    public Mesh closed() {
        var places = mends.isPresent() ? Mending.onePerPlace(edges, points) : Mending.each(points);
        var sum = EdgeSum.of(mends.isPresent() ? edges.renumbered(places) : edges, points.count());
        var whole = mends.isPresent() ? Mending.settled(sum, points, mends.getAsDouble()) : sum;
        var joined = StraightRuns.joined(whole, points, 0, kept(places));
        var cut = Faces.cut(joined.with(rims.renumbered(places)), points, planes);
        for (int i = 0; i < triangles.count(); i++) {
            cut.add(places[triangles.get(i)]);
        }
        return parted(mesh(cut));
    }

    /** The points that rims and finished triangles need. */
    private boolean[] kept(int[] places) {
        var kept = new boolean[points.count()];
        for (int i = 0; i < triangles.count(); i++) {
            kept[places[triangles.get(i)]] = true;
        }
        for (int edge = 0; edge < rims.count(); edge++) {
            kept[places[rims.from(edge)]] = true;
        }
        return kept;
    }

    /** The mesh of the points that triangles use, in order. */
    private Mesh mesh(Ints corners) {
        // how many points before each are used
        var before = new int[points.count() + 1];
        for (int i = 0; i < corners.count(); i++) {
            before[corners.get(i) + 1] = 1;
        }
        for (int point = 0; point < points.count(); point++) {
            before[point + 1] += before[point];
        }
        var vertices = new int[corners.count()];
        for (int i = 0; i < vertices.length; i++) {
            vertices[i] = before[corners.get(i)];
        }
        return new Mesh(coordinates(before), vertices);
    }

    private int[] coordinates(int[] before) {
        var xyz = new int[3 * before[points.count()]];
        for (int point = 0; point < points.count(); point++) {
            if (before[point + 1] > before[point]) {
                int at = 3 * before[point];
                xyz[at] = points.onGrid(point, 0);
                xyz[at + 1] = points.onGrid(point, 1);
                xyz[at + 2] = points.onGrid(point, 2);
            }
        }
        return xyz;
    }

    private static Mesh parted(Mesh mesh) {
        if (EdgeCheck.isParted(mesh)) {
            return mesh;
        }
        var parted = TouchSplit.split(Folds.smoothed(mesh));
        if (!EdgeCheck.isParted(parted)) {
            throw new BrokenMeshException("it touches itself");
        }
        return parted;
    }
}
