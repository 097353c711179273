package org.standwright.solid.mesh;

import java.util.List;

/**
 * Gets rid of triangles without area. Such a triangle has one corner on the side between the two others; the triangle
 * across that side is cut in two from there instead.
 */
final class Slivers {
    private Slivers() {}

    static void flip(List<int[]> triangles, Sweep sweep) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = triangles.size() - 1; i >= 0; i--) {
                if (isFlat(triangles.get(i), sweep)) {
                    changed |= flip(triangles, i, sweep);
                }
            }
        }
    }

    private static boolean isFlat(int[] triangle, Sweep sweep) {
        return sweep.turn(triangle[0], triangle[1], triangle[2]) == 0;
    }

    private static boolean flip(List<int[]> triangles, int flat, Sweep sweep) {
        int middle = middle(triangles.get(flat), sweep);
        int m = triangles.get(flat)[middle];
        int p = triangles.get(flat)[(middle + 1) % 3];
        int q = triangles.get(flat)[(middle + 2) % 3];
        for (int i = 0; i < triangles.size(); i++) {
            var across = triangles.get(i);
            int side = side(across, q, p);
            if (side >= 0 && !isFlat(across, sweep)) {
                int r = across[(side + 2) % 3];
                triangles.set(flat, new int[] {q, m, r});
                triangles.set(i, new int[] {m, p, r});
                return true;
            }
        }
        return false;
    }

    private static int middle(int[] triangle, Sweep sweep) {
        for (int i = 0; i < 3; i++) {
            int towards = sweep.compare(triangle[i], triangle[(i + 1) % 3]);
            int away = sweep.compare(triangle[i], triangle[(i + 2) % 3]);
            if (towards * away < 0) {
                return i;
            }
        }
        throw new BrokenMeshException("a face has two corners in one point");
    }

    /** Which side of {@code triangle} runs from {@code from} to {@code to}; -1 for none. */
    private static int side(int[] triangle, int from, int to) {
        for (int i = 0; i < 3; i++) {
            if (triangle[i] == from && triangle[(i + 1) % 3] == to) {
                return i;
            }
        }
        return -1;
    }
}
