package org.standwright.viewer.scene;

import java.util.Arrays;
import java.util.HashMap;
import java.util.function.IntBinaryOperator;
import java.util.function.IntFunction;
import org.standwright.geom.Vec3;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.surface.Surface;

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
        return of(solid.triangleCount(), solid::corner, solid::normal);
    }

    /** With its rim, where it is not closed. */
    static Creases of(Surface surface) {
        return of(surface.triangleCount(), surface::corner, surface::normal);
    }

    private static Creases of(int triangles, IntBinaryOperator corners, IntFunction<Vec3> normals) {
        var half = new HashMap<Long, Integer>();
        var ends = new int[6 * triangles];
        int found = 0;
        for (int triangle = 0; triangle < triangles; triangle++) {
            for (int corner = 0; corner < 3; corner++) {
                int from = corners.applyAsInt(triangle, corner);
                int to = corners.applyAsInt(triangle, (corner + 1) % 3);
                var other = half.remove(key(to, from));
                if (other == null) {
                    half.put(key(from, to), triangle);
                } else if (isSharp(normals.apply(triangle), normals.apply(other))) {
                    ends[found++] = from;
                    ends[found++] = to;
                }
            }
        }
        for (long rim : half.keySet().stream().sorted().toList()) {
            ends[found++] = (int) (rim >> 32);
            ends[found++] = (int) rim;
        }
        return new Creases(Arrays.copyOf(ends, found));
    }

    int count() {
        return ends.length / 2;
    }

    private static boolean isSharp(Vec3 normal, Vec3 other) {
        return Orbit.dot(normal, other) < COSINE;
    }

    private static long key(int from, int to) {
        return (long) from << 32 | to;
    }
}
