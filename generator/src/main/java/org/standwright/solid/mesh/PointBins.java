package org.standwright.solid.mesh;

/** Points sorted into square bins seen from above, to find those near a segment. */
final class PointBins {
    private static final int MOST_PER_SIDE = 256;
    /** Points crowd in the rims of holes, so that most bins stay empty. */
    private static final int BINS_PER_POINT = 4;

    private final Points points;
    private final double minX;
    private final double minY;
    private final double size;
    private final double perUnit;
    private final int columns;
    private final int rows;
    private final int[] starts;
    private final int[] members;
    private final Ints near = new Ints(64);

    /** Bins for the points marked in {@code used}. */
    PointBins(Points points, boolean[] used) {
        this.points = points;
        double x0 = Double.POSITIVE_INFINITY;
        double y0 = Double.POSITIVE_INFINITY;
        double x1 = Double.NEGATIVE_INFINITY;
        double y1 = Double.NEGATIVE_INFINITY;
        int count = 0;
        for (int p = 0; p < used.length; p++) {
            if (!used[p]) {
                continue;
            }
            count++;
            x0 = Math.min(x0, points.x(p));
            x1 = Math.max(x1, points.x(p));
            y0 = Math.min(y0, points.y(p));
            y1 = Math.max(y1, points.y(p));
        }
        minX = x0;
        minY = y0;
        double perSide = Math.max(1, Math.min(MOST_PER_SIDE, Math.sqrt((double) BINS_PER_POINT * count)));
        size = Math.max(1, Math.max(x1 - x0, y1 - y0) / perSide);
        perUnit = 1 / size;
        columns = (int) ((x1 - x0) * perUnit) + 1;
        rows = (int) ((y1 - y0) * perUnit) + 1;
        starts = new int[columns * rows + 1];
        members = new int[fillStarts(used)];
        fillMembers(used);
    }

    private int fillStarts(boolean[] used) {
        for (int p = 0; p < used.length; p++) {
            if (used[p]) {
                starts[bin(p) + 1]++;
            }
        }
        for (int bin = 1; bin < starts.length; bin++) {
            starts[bin] += starts[bin - 1];
        }
        return starts[starts.length - 1];
    }

    private void fillMembers(boolean[] used) {
        var next = starts.clone();
        for (int p = 0; p < used.length; p++) {
            if (used[p]) {
                members[next[bin(p)]++] = p;
            }
        }
    }

    private int bin(int p) {
        return column(points.x(p)) * rows + row(points.y(p));
    }

    private int column(double x) {
        return Math.max(0, Math.min(columns - 1, (int) ((x - minX) * perUnit)));
    }

    private int row(double y) {
        return Math.max(0, Math.min(rows - 1, (int) ((y - minY) * perUnit)));
    }

    /** All points within {@code reach} of the segment, and some further ones; until the next call. */
    Ints near(int a, int b, double reach) {
        near.clear();
        double low = Math.min(points.y(a), points.y(b)) - reach;
        double high = Math.max(points.y(a), points.y(b)) + reach;
        int first = column(Math.min(points.x(a), points.x(b)) - reach);
        int last = column(Math.max(points.x(a), points.x(b)) + reach);
        if (first == last) {
            visit(first, row(low), row(high));
        } else {
            visitAlong(a, b, reach, first, last, low, high);
        }
        return near;
    }

    private void visitAlong(int a, int b, double reach, int first, int last, double low, double high) {
        double ax = points.x(a);
        double dx = points.x(b) - ax;
        double slope = (points.y(b) - points.y(a)) / dx;
        for (int column = first; column <= last; column++) {
            double left = points.y(a) + slope * (minX + column * size - reach - ax);
            double right = points.y(a) + slope * (minX + (column + 1) * size + reach - ax);
            boolean steep = Math.abs(dx) < 1;
            double from = steep ? low : Math.max(low, Math.min(left, right) - reach);
            double to = steep ? high : Math.min(high, Math.max(left, right) + reach);
            visit(column, row(from), row(to));
        }
    }

    private void visit(int column, int firstRow, int lastRow) {
        int end = starts[column * rows + lastRow + 1];
        for (int i = starts[column * rows + firstRow]; i < end; i++) {
            near.add(members[i]);
        }
    }
}
