package org.standwright.solid.mesh.face;

/** The triangles that the faces of one plane are cut into, and the proof that they are those faces. */
final class Cover {
    private final Corners corners;
    private final int[] triangles;
    private int count;
    private int flat;
    private long area;

    /** To be covered by {@code expected} triangles. */
    Cover(Corners corners, int expected) {
        this.corners = corners;
        triangles = new int[3 * Math.max(0, expected)];
    }

    /** Adds a triangle of corners, with twice its area. */
    void add(int a, int b, int c, long turn) {
        if (count == triangles.length) {
            throw new BrokenFaceException("a face is not covered by its triangles");
        }
        if (turn < 0) {
            throw new BrokenFaceException("a face folds over");
        }
        if (turn == 0) {
            flat++;
        }
        area += turn;
        set(count, a, b, c);
        count += 3;
    }

    private void set(int at, int a, int b, int c) {
        triangles[at] = a;
        triangles[at + 1] = b;
        triangles[at + 2] = c;
    }

    /** Three corners to each triangle. Throws {@link BrokenFaceException} unless they cover the area {@code loops}. */
    int[] finished(long loops) {
        boolean changed = true;
        while (flat > 0 && changed) {
            changed = flipAll();
        }
        if (flat > 0 || count != triangles.length || area != loops) {
            throw new BrokenFaceException("a face is not covered by its triangles");
        }
        return triangles;
    }

    /**
     * Gets rid of triangles without area. Such a triangle has one corner on the side between the two others; the
     * triangle across that side is cut in two from there instead.
     */
    private boolean flipAll() {
        boolean changed = false;
        for (int at = count - 3; at >= 0; at -= 3) {
            if (turn(at) == 0) {
                changed |= flip(at);
            }
        }
        return changed;
    }

    private boolean flip(int at) {
        int middle = middle(at);
        int m = corner(at, middle);
        int p = corner(at, middle + 1);
        int q = corner(at, middle + 2);
        for (int across = 0; across < count; across += 3) {
            int side = side(across, q, p);
            long whole = turn(across);
            if (side >= 0 && whole != 0) {
                int r = corner(across, side + 2);
                set(at, q, m, r);
                set(across, m, p, r);
                area += turn(at) + turn(across) - whole;
                flat -= turn(at) > 0 && turn(across) > 0 ? 1 : 0;
                return true;
            }
        }
        return false;
    }

    private int middle(int at) {
        for (int i = 0; i < 3; i++) {
            int towards = corners.compare(corner(at, i), corner(at, i + 1));
            int away = corners.compare(corner(at, i), corner(at, i + 2));
            if (towards * away < 0) {
                return i;
            }
        }
        throw new BrokenFaceException("a face has two corners in one point");
    }

    /** Which side of a triangle runs from {@code from} to {@code to}; -1 for none. */
    private int side(int at, int from, int to) {
        for (int i = 0; i < 3; i++) {
            if (corner(at, i) == from && corner(at, i + 1) == to) {
                return i;
            }
        }
        return -1;
    }

    private int corner(int at, int i) {
        return triangles[at + i % 3];
    }

    private long turn(int at) {
        return corners.turn(triangles[at], triangles[at + 1], triangles[at + 2]);
    }
}
