package org.standwright.viewer.scene;

import java.util.Arrays;
import java.util.HashMap;
import org.standwright.solid.Solid;

/**
 * The edges of a solid at which its faces meet at an angle: what a drawing would show as lines.
 *
 * @param ends two vertices of the solid for each edge
 */
record Creases(int[] ends) {
    /** Sharper than the corners of a round hole, which is drawn as a polygon of twelve sides at least; degrees. */
    private static final double LEAST_ANGLE = 31;

    private static final double COSINE = Math.cos(Math.toRadians(LEAST_ANGLE));

    static Creases of(Solid solid) {
        var half = new HashMap<Long, Integer>();
        var ends = new int[6 * solid.triangleCount()];
        int found = 0;
        for (int triangle = 0; triangle < solid.triangleCount(); triangle++) {
            for (int corner = 0; corner < 3; corner++) {
                int from = solid.corner(triangle, corner);
                int to = solid.corner(triangle, (corner + 1) % 3);
                var other = half.remove(key(to, from));
                if (other == null) {
                    half.put(key(from, to), triangle);
                } else if (isSharp(solid, triangle, other)) {
                    ends[found++] = from;
                    ends[found++] = to;
                }
            }
        }
        return new Creases(Arrays.copyOf(ends, found));
    }

    int count() {
        return ends.length / 2;
    }

    private static boolean isSharp(Solid solid, int triangle, int other) {
        return Orbit.dot(solid.normal(triangle), solid.normal(other)) < COSINE;
    }

    private static long key(int from, int to) {
        return (long) from << 32 | to;
    }
}
