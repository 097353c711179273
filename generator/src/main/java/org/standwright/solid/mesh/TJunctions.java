package org.standwright.solid.mesh;

import java.util.Arrays;

/** Makes every face break its edges where a corner of any face lies on them, so that faces meet corner to corner. */
final class TJunctions {
    private final Edges edges;
    private final Points points;
    private final double reach;
    private final PointBins bins;
    private final Edges broken;
    /** The points that break the edge at hand, and how far along it they do. */
    private int[] breaks = new int[16];

    private double[] along = new double[16];
    private int count;

    private TJunctions(Edges edges, Points points, double reach) {
        this.edges = edges;
        this.points = points;
        this.reach = reach;
        var used = new boolean[points.count()];
        for (int edge = 0; edge < edges.count(); edge++) {
            used[edges.from(edge)] = true;
            used[edges.to(edge)] = true;
        }
        bins = new PointBins(points, used);
        broken = new Edges(edges.count());
    }

    /** Breaks edges at all ends of edges that lie within {@code reach} of them (1/1024 mm); returns {@code edges} if none do. */
    static Edges broken(Edges edges, Points points, double reach) {
        if (edges.count() == 0) {
            return edges;
        }
        var junctions = new TJunctions(edges, points, reach);
        for (int edge = 0; edge < edges.count(); edge++) {
            junctions.addPieces(edge);
        }
        return junctions.broken.count() == edges.count() ? edges : junctions.broken;
    }

    private void addPieces(int edge) {
        int from = edges.from(edge);
        int to = edges.to(edge);
        // seen the same way from both sides, so that both break alike
        find(Math.min(from, to), Math.max(from, to));
        int plane = edges.plane(edge);
        int last = from;
        for (int i = 0; i < count; i++) {
            int point = breaks[from < to ? i : count - 1 - i];
            broken.add(plane, last, point);
            last = point;
        }
        broken.add(plane, last, to);
    }

    private void find(int a, int b) {
        count = 0;
        var near = bins.near(a, b, reach);
        for (int i = 0; i < near.count(); i++) {
            int p = near.get(i);
            if (p != a && p != b && points.isBetween(a, b, p, reach)) {
                insert(p, points.along(a, b, p));
            }
        }
    }

    private void insert(int point, double at) {
        if (count == breaks.length) {
            breaks = Arrays.copyOf(breaks, 2 * count);
            along = Arrays.copyOf(along, 2 * count);
        }
        int place = count++;
        while (place > 0 && isAfter(place - 1, point, at)) {
            breaks[place] = breaks[place - 1];
            along[place] = along[place - 1];
            place--;
        }
        breaks[place] = point;
        along[place] = at;
    }

    private boolean isAfter(int place, int point, double at) {
        return along[place] > at || along[place] == at && breaks[place] > point;
    }
}
