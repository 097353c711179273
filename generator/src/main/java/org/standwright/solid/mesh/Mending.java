package org.standwright.solid.mesh;

/** Makes pieces meet corner to corner that so far only lie against each other, on the grid. */
final class Mending {
    /** A corner this close to an edge bends it, lest the two should change sides: in 1/1024 mm. */
    private static final double HALF_A_STEP = 0.5;
    /** How far rounding in two directions moves the ends of an edge off its line: the square root of a half. */
    static final double ROUNDED = 0.75;
    /** Bending one edge may bring it near the next corner, but seldom twice. */
    private static final int ROUNDS = 8;

    private Mending() {}

    /** For each point that edges use, the first of them in the same place; other points stand for themselves. */
    static int[] onePerPlace(Edges edges, Points points) {
        var places = new Quadruples();
        var firsts = new Ints(256);
        var same = each(points);
        var known = new boolean[same.length];
        for (int edge = 0; edge < edges.count(); edge++) {
            int point = edges.from(edge);
            if (!known[point]) {
                known[point] = true;
                same[point] = first(point, points, places, firsts);
            }
        }
        return same;
    }

    private static int first(int point, Points points, Quadruples places, Ints firsts) {
        int place = places.number(points.onGrid(point, 0), points.onGrid(point, 1), points.onGrid(point, 2), 0);
        if (place == firsts.count()) {
            firsts.add(point);
        }
        return firsts.get(place);
    }

    /** Every point for itself. */
    static int[] each(Points points) {
        var each = new int[points.count()];
        for (int point = 0; point < each.length; point++) {
            each[point] = point;
        }
        return each;
    }

    /** Breaks edges where corners lie on them, until none does. */
    static Edges settled(Edges edges, Points points) {
        var before = edges;
        for (int round = 0; round < ROUNDS; round++) {
            var broken = TJunctions.broken(before, points, HALF_A_STEP);
            if (broken == before) {
                return before;
            }
            before = EdgeSum.of(broken, points.count());
        }
        throw new BrokenMeshException("its features run too close to each other");
    }
}
