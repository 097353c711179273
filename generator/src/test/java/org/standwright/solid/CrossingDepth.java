package org.standwright.solid;

/** How deep two triangles that pass through each other do so, in grid units, up to rounding. */
final class CrossingDepth {
    /** Lengths of which no grid point comes closer. */
    private static final double NOTHING = 1e-9;

    private CrossingDepth() {}

    static double of(int[][] a, int[][] b) {
        double deepest = 0;
        for (int i = 0; i < 3; i++) {
            deepest = Math.max(deepest, through(a[i], a[(i + 1) % 3], b));
            deepest = Math.max(deepest, through(b[i], b[(i + 1) % 3], a));
        }
        return deepest > 0 ? deepest : Math.min(inside(a, b), inside(b, a));
    }

    /** What parts an edge that goes through a triangle from leaving it: by one of its ends, or over one of the sides. */
    private static double through(int[] p, int[] q, int[][] triangle) {
        var normal = unit(cross(minus(triangle[1], triangle[0]), minus(triangle[2], triangle[0])));
        double before = dot(normal, minus(p, triangle[0]));
        double behind = dot(normal, minus(q, triangle[0]));
        if (before * behind >= 0) {
            return 0;
        }
        double share = before / (before - behind);
        double depth = Math.min(Math.abs(before), Math.abs(behind));
        for (int i = 0; i < 3; i++) {
            var side = minus(triangle[(i + 1) % 3], triangle[i]);
            var from = minus(p, triangle[i]);
            var on = minus(q, p);
            var at = new double[] {from[0] + share * on[0], from[1] + share * on[1], from[2] + share * on[2]};
            depth = Math.min(depth, dot(unit(cross(normal, side)), at));
        }
        return Math.max(0, depth);
    }

    /** Of two in one plane: how far at most the other reaches over the side of one over which it reaches least. */
    private static double inside(int[][] one, int[][] other) {
        var normal = cross(minus(one[1], one[0]), minus(one[2], one[0]));
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 3; i++) {
            var inwards = unit(cross(normal, minus(one[(i + 1) % 3], one[i])));
            double most = 0;
            for (var corner : other) {
                most = Math.max(most, dot(inwards, minus(corner, one[i])));
            }
            least = Math.min(least, most);
        }
        return least;
    }

    private static double[] minus(int[] a, int[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    private static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    private static double[] unit(double[] v) {
        double length = Math.max(NOTHING, Math.sqrt(dot(v, v)));
        return new double[] {v[0] / length, v[1] / length, v[2] / length};
    }
}
