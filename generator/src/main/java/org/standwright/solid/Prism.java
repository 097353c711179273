package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.standwright.solid.mesh.Planes.Plane;

/**
 * A convex prism on the grid: the blank, or what one tool sweeps out of it.
 *
 * @param outline counter-clockwise seen against its direction, strictly convex, 1/1024 mm
 * @param bottom lower w of its direction, 1/1024 mm: of an upright prism its lower z
 * @param top upper w, above {@code bottom}
 */
record Prism(Direction direction, List<Corner> outline, int bottom, int top) {
    /** A point of an outline; of an upright prism x and y. */
    record Corner(int u, int v) {}

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
                    "a prism of " + outline.size() + " corners from " + bottom + " to " + top + " encloses nothing.");
        }
    }

    static Prism box(int x0, int y0, int x1, int y1, int bottom, int top) {
        var outline = List.of(new Corner(x0, y0), new Corner(x1, y0), new Corner(x1, y1), new Corner(x0, y1));
        return upright(outline, bottom, top);
    }

    static Prism upright(List<Corner> outline, int bottom, int top) {
        return new Prism(Direction.UP, outline, bottom, top);
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
        return direction.inSpace(seen());
    }

    /** The box around it in its direction's frame. */
    Extent seen() {
        return new Extent(
                us().min().getAsInt(),
                vs().min().getAsInt(),
                bottom,
                us().max().getAsInt(),
                vs().max().getAsInt(),
                top);
    }

    /** x, y and z of an outline's corner at height {@code w}. */
    int[] point(Corner corner, int w) {
        return direction.xyz(corner.u, corner.v, w);
    }

    /** The plane of the side from one corner to the next, facing outwards. */
    Plane side(Corner from, Corner to) {
        return direction.inSpace(Plane.upright(from.u, from.v, to.u, to.v));
    }

    /** The plane square to its direction at {@code w}, facing that way (1) or against it (-1). */
    Plane level(int w, int side) {
        return direction.inSpace(Plane.level(w, side));
    }

    /** Area of the outline, in square grid units. */
    double area() {
        long twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            var a = outline.get(i);
            var b = outline.get((i + 1) % outline.size());
            twice += (long) a.u * b.v - (long) b.u * a.v;
        }
        return twice / 2.0;
    }

    private IntStream us() {
        return outline.stream().mapToInt(Corner::u);
    }

    private IntStream vs() {
        return outline.stream().mapToInt(Corner::v);
    }

    private static long turn(Corner a, Corner b, Corner c) {
        return (long) (b.u - a.u) * (c.v - b.v) - (long) (b.v - a.v) * (c.u - b.u);
    }
}
