package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * An upright convex prism on the grid: the blank, or what one tool sweeps out of it.
 *
 * @param outline counter-clockwise seen from above, strictly convex, 1/1024 mm
 * @param bottom lower z, 1/1024 mm
 * @param top upper z, above {@code bottom}
 */
record Prism(List<Corner> outline, int bottom, int top) {
    record Corner(int x, int y) {}

    /** A box along the axes. */
    record Extent(int x0, int y0, int z0, int x1, int y1, int z1) {
        /** Whether the two share at least a point. */
        boolean touches(Extent other) {
            return x0 <= other.x1
                    && other.x0 <= x1
                    && y0 <= other.y1
                    && other.y0 <= y1
                    && z0 <= other.z1
                    && other.z0 <= z1;
        }
    }

    Prism {
        outline = List.copyOf(outline);
        if (outline.size() < 3 || top <= bottom) {
            throw new IllegalArgumentException(
                    "a prism of " + outline.size() + " corners from z " + bottom + " to " + top + " encloses nothing.");
        }
    }

    static Prism box(int x0, int y0, int x1, int y1, int bottom, int top) {
        var outline = List.of(new Corner(x0, y0), new Corner(x1, y0), new Corner(x1, y1), new Corner(x0, y1));
        return new Prism(outline, bottom, top);
    }

    /** Leaves out corners that rounding has merged or pressed flat; fewer than 3 remain when nothing is enclosed. */
    static List<Corner> strictlyConvex(List<Corner> ring) {
        var kept = new ArrayList<>(ring);
        int since = 0;
        for (int i = 0; kept.size() > 2 && since < kept.size(); ) {
            int n = kept.size();
            if (turn(kept.get((i + n - 1) % n), kept.get(i), kept.get((i + 1) % n)) > 0) {
                since++;
                i = (i + 1) % n;
            } else {
                kept.remove(i);
                since = 0;
                i = (i + n - 2) % (n - 1);
            }
        }
        return kept;
    }

    /** The box around it. */
    Extent extent() {
        return new Extent(
                xs().min().getAsInt(),
                ys().min().getAsInt(),
                bottom,
                xs().max().getAsInt(),
                ys().max().getAsInt(),
                top);
    }

    /** Area of the outline, in square grid units. */
    double area() {
        long twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            var a = outline.get(i);
            var b = outline.get((i + 1) % outline.size());
            twice += (long) a.x * b.y - (long) b.x * a.y;
        }
        return twice / 2.0;
    }

    private IntStream xs() {
        return outline.stream().mapToInt(Corner::x);
    }

    private IntStream ys() {
        return outline.stream().mapToInt(Corner::y);
    }

    private static long turn(Corner a, Corner b, Corner c) {
        return (long) (b.x - a.x) * (c.y - b.y) - (long) (b.y - a.y) * (c.x - b.x);
    }
}
