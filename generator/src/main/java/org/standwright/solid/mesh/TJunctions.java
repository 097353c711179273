package org.standwright.solid.mesh;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes every face break its edges where a corner of any face lies on them, so that faces meet corner to corner. */
final class TJunctions {
    private record Inserted(int point, double along) {}

    private final Points points;
    private final double reach;
    private final PointBins bins;

    private TJunctions(EdgeChain chain, Points points, double reach) {
        this.points = points;
        this.reach = reach;
        var used = new boolean[points.count()];
        for (int edge = 0; edge < chain.count(); edge++) {
            used[chain.low(edge)] = true;
            used[chain.high(edge)] = true;
        }
        bins = new PointBins(points, used);
    }

    /** Breaks edges at all ends of edges that lie within {@code reach} of them (1/1024 mm). */
    static EdgeChain broken(EdgeChain chain, Points points, double reach) {
        var junctions = new TJunctions(chain, points, reach);
        var sum = new EdgeSum();
        for (int edge = 0; edge < chain.count(); edge++) {
            junctions.addPieces(chain, edge, sum);
        }
        return sum.total();
    }

    private void addPieces(EdgeChain chain, int edge, EdgeSum sum) {
        int plane = chain.plane(edge);
        int from = chain.low(edge);
        for (var next : on(from, chain.high(edge))) {
            addPiece(plane, from, next.point, chain.isDownward(edge), sum);
            from = next.point;
        }
        addPiece(plane, from, chain.high(edge), chain.isDownward(edge), sum);
    }

    private static void addPiece(int plane, int a, int b, boolean downward, EdgeSum sum) {
        sum.add(plane, downward ? b : a, downward ? a : b);
    }

    private List<Inserted> on(int a, int b) {
        var inserted = new ArrayList<Inserted>();
        bins.near(a, b, reach, p -> {
            double along = points.along(a, b, p);
            if (p != a && p != b && along > 0 && along < 1 && points.off(a, b, along, p) <= reach) {
                inserted.add(new Inserted(p, along));
            }
        });
        inserted.sort(Comparator.comparingDouble(Inserted::along).thenComparingInt(Inserted::point));
        return inserted;
    }
}
