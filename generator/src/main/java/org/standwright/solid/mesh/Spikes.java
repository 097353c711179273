package org.standwright.solid.mesh;

/**
 * Cuts corners off the boundary of a face that rounding has turned on end: where it runs out to a point and straight
 * back as the plane is seen square on, the two edges are two sides of a triangle that stands across the plane.
 */
final class Spikes {
    private static final int NONE = -1;

    private final Flat flat;
    private final Points points;
    private final Ints triangles;
    private Edges edges;

    private Spikes(Edges edges, Flat flat, Points points, Ints triangles) {
        this.edges = edges;
        this.flat = flat;
        this.points = points;
        this.triangles = triangles;
    }

    /** The edges of one plane without spikes; the triangles that they were the sides of go to {@code triangles}. */
    static Edges cut(Edges edges, Flat flat, Points points, Ints triangles) {
        var spikes = new Spikes(EdgeSum.of(edges, points.count()), flat, points, triangles);
        while (spikes.cutOne()) {
            spikes.edges = EdgeSum.of(spikes.edges, points.count());
        }
        return spikes.edges;
    }

    private boolean cutOne() {
        for (int edge = 0; edge < edges.count(); edge++) {
            int next = only(edge);
            if (next != NONE && isSpike(edges.from(edge), edges.to(edge), edges.to(next))) {
                cut(edge, next);
                return true;
            }
        }
        return false;
    }

    /** The edge that starts where one ends, if none but these two meet there. */
    private int only(int edge) {
        int found = NONE;
        for (int other = 0; other < edges.count(); other++) {
            if (edges.from(other) == edges.to(edge)) {
                if (found != NONE) {
                    return NONE;
                }
                found = other;
            }
        }
        return found;
    }

    private boolean isSpike(int a, int b, int c) {
        long on = (long) (flat.u(b) - flat.u(a)) * (flat.u(c) - flat.u(b))
                + (long) (flat.v(b) - flat.v(a)) * (flat.v(c) - flat.v(b));
        return flat.turn(a, b, c) == 0 && on <= 0 && a != c && !points.isInLine(a, b, c);
    }

    private void cut(int edge, int next) {
        triangles.add(edges.from(edge));
        triangles.add(edges.to(edge));
        triangles.add(edges.to(next));
        var rest = new Edges(edges.count());
        for (int other = 0; other < edges.count(); other++) {
            if (other != edge && other != next) {
                rest.add(edges.plane(other), edges.from(other), edges.to(other));
            }
        }
        rest.add(edges.plane(edge), edges.from(edge), edges.to(next));
        edges = rest;
    }
}
