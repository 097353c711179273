package org.standwright.solid;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Triangles of a solid that pass through each other, by exact predicates: an edge of one strictly crosses the inside of
 * the other, or both lie in one plane and share an area. Touching is
 * none, nor is an edge that goes exactly through the side of a triangle: ridges that touch do that too.
 */
final class SelfCrossings {
    /**
     * Two triangles by their numbers.
     *
     * @param depth how far one would have to move for the other at most, mm
     */
    record Pair(int one, int other, double depth) {}

    private final int[][][] triangles;
    private final int[][] boxes;

    private SelfCrossings(Solid solid) {
        triangles = new int[solid.triangleCount()][3][];
        boxes = new int[solid.triangleCount()][];
        for (int t = 0; t < triangles.length; t++) {
            for (int i = 0; i < 3; i++) {
                var at = solid.vertex(solid.corner(t, i));
                triangles[t][i] = new int[] {units(at.x()), units(at.y()), units(at.z())};
            }
            boxes[t] = box(triangles[t]);
        }
    }

    static List<Pair> of(Solid solid) {
        return new SelfCrossings(solid).pairs();
    }

    /** A vertex is an exact multiple of the grid's step. */
    private static int units(double mm) {
        return (int) (mm * Solid.PER_MM);
    }

    private static int[] box(int[][] triangle) {
        var box = new int[6];
        for (int axis = 0; axis < 3; axis++) {
            box[axis] = Math.min(triangle[0][axis], Math.min(triangle[1][axis], triangle[2][axis]));
            box[axis + 3] = Math.max(triangle[0][axis], Math.max(triangle[1][axis], triangle[2][axis]));
        }
        return box;
    }

    private List<Pair> pairs() {
        var order = new Integer[triangles.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingInt(t -> boxes[t][0]));
        var pairs = new ArrayList<Pair>();
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length && boxes[order[j]][0] <= boxes[order[i]][3]; j++) {
                if (overlap(boxes[order[i]], boxes[order[j]]) && cross(triangles[order[i]], triangles[order[j]])) {
                    double depth = CrossingDepth.of(triangles[order[i]], triangles[order[j]]) / Solid.PER_MM;
                    pairs.add(new Pair(order[i], order[j], depth));
                }
            }
        }
        return pairs;
    }

    private static boolean overlap(int[] a, int[] b) {
        return a[1] <= b[4] && b[1] <= a[4] && a[2] <= b[5] && b[2] <= a[5];
    }

    static boolean cross(int[][] a, int[][] b) {
        var sidesOfA = sides(a, b);
        if (allOn(1, sidesOfA) || allOn(-1, sidesOfA)) {
            return false;
        }
        if (allOn(0, sidesOfA)) {
            return share(a, b);
        }
        return pierces(a, sidesOfA, b) || pierces(b, sides(b, a), a);
    }

    /** On which side of the plane of b each corner of a lies. */
    private static int[] sides(int[][] a, int[][] b) {
        return new int[] {
            Predicates.side(b[0], b[1], b[2], a[0]),
            Predicates.side(b[0], b[1], b[2], a[1]),
            Predicates.side(b[0], b[1], b[2], a[2])
        };
    }

    private static boolean allOn(int side, int[] sides) {
        return sides[0] == side && sides[1] == side && sides[2] == side;
    }

    /** Whether an edge of a goes through the inside of b. */
    private static boolean pierces(int[][] a, int[] sides, int[][] b) {
        boolean pierces = false;
        for (int i = 0; i < 3; i++) {
            int j = (i + 1) % 3;
            pierces |= sides[i] * sides[j] < 0 && goesThrough(a[i], a[j], b);
        }
        return pierces;
    }

    /** Whether a line from p to q, on both sides of the plane of b, goes through the inside of b. */
    private static boolean goesThrough(int[] p, int[] q, int[][] b) {
        int first = Predicates.side(p, q, b[0], b[1]);
        return first != 0 && first == Predicates.side(p, q, b[1], b[2]) && first == Predicates.side(p, q, b[2], b[0]);
    }

    /** Whether two triangles in one plane have an area in common: then no side of either parts them. */
    private static boolean share(int[][] a, int[][] b) {
        int axis = 0;
        while (Predicates.turn(a[0], a[1], a[2], axis) == 0) {
            axis++;
        }
        return !parts(a, b, axis) && !parts(b, a, axis);
    }

    private static boolean parts(int[][] a, int[][] b, int axis) {
        int inside = Predicates.turn(a[0], a[1], a[2], axis);
        for (int i = 0; i < 3; i++) {
            boolean parted = true;
            for (var corner : b) {
                parted &= Predicates.turn(a[i], a[(i + 1) % 3], corner, axis) != inside;
            }
            if (parted) {
                return true;
            }
        }
        return false;
    }
}
