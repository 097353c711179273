package org.standwright.solid.mesh;

/** The surface of a solid while it is put together, piece by piece, on the 1/1024 mm grid. */
public final class Shell {
    static final int UNUSED = -1;

    private final Planes planes;
    private final Points points = new Points();
    private final Edges edges = new Edges(256);
    private final Edges rims = new Edges(16);
    private final Ints triangles = new Ints(256);
    private boolean mends;
    private boolean hasLoose;

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
        triangles.add(a, b, c);
    }

    /**
     * From now on pieces may meet in mid-edge, and in one place there may be several points. Without this call pieces
     * given by {@link #edge} meet corner to corner.
     */
    void mend() {
        mends = true;
    }

    int pointCount() {
        return points.count();
    }

    /** A point that goes to the grid only when pieces have been made to meet in it. */
    int loose(double x, double y, double z) {
        hasLoose = true;
        return points.add(x, y, z);
    }

    /** The closed mesh, checked. Throws {@link BrokenMeshException} if the pieces make none. */
    public Mesh closed() {
        var grid = hasLoose ? points.rounded() : points;
        var met = hasLoose ? TJunctions.broken(edges, points, Mending.ROUNDED) : edges;
        var places = mends ? Mending.onePerPlace(met, grid) : Mending.each(grid);
        var sum = EdgeSum.of(mends ? met.renumbered(places) : met, grid.count());
        var whole = mends ? Mending.settled(sum, grid) : sum;
        try {
            return closed(StraightRuns.joined(whole, grid, Mending.ROUNDED, kept(places)), grid, places);
        } catch (BrokenMeshException e) {
            // an edge that went straight on ran over a corner beside it
            return closed(StraightRuns.joined(whole, grid, 0, kept(places)), grid, places);
        }
    }

    private Mesh closed(Edges whole, Points grid, int[] places) {
        var cut = Faces.cut(whole.with(rims.renumbered(places)), grid, planes);
        cut.addAll(places, triangles);
        return parted(mesh(cut.toArray(), grid));
    }

    /** The points that rims and finished triangles need. */
    private boolean[] kept(int[] places) {
        var kept = new boolean[points.count()];
        for (int corner : triangles.toArray()) {
            kept[places[corner]] = true;
        }
        for (int edge = 0; edge < rims.count(); edge++) {
            kept[places[rims.from(edge)]] = true;
        }
        return kept;
    }

    /** The mesh of the points that triangles use, in order. */
    private static Mesh mesh(int[] triangles, Points points) {
        var numbers = new int[points.count()];
        for (int point : triangles) {
            numbers[point] = 1;
        }
        int used = 0;
        for (int point = 0; point < numbers.length; point++) {
            if (numbers[point] > 0) {
                numbers[point] = used++;
            } else {
                numbers[point] = UNUSED;
            }
        }
        for (int i = 0; i < triangles.length; i++) {
            triangles[i] = numbers[triangles[i]];
        }
        return new Mesh(points.onGrid(numbers, used), triangles);
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
