package org.standwright.solid.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Takes away two triangles with the same corners that look opposite ways: a sliver of material, or of air, that rounding
 * has pressed to nothing. The edges of one are those of the other the other way round, so that the mesh stays closed.
 */
final class Folds {
    private record Corners(int low, int middle, int high) {}

    private Folds() {}

    /** {@code mesh} itself if it has none. */
    static Mesh smoothed(Mesh mesh) {
        var triangles = mesh.triangles();
        Map<Corners, Integer> open = new HashMap<>();
        var gone = new boolean[triangles.length / 3];
        for (int triangle = 0; triangle < gone.length; triangle++) {
            var corners = corners(triangles, triangle);
            var other = open.get(corners);
            if (other != null && isTurned(triangles, triangle) != isTurned(triangles, other)) {
                gone[triangle] = true;
                gone[other] = true;
                open.remove(corners);
            } else {
                open.put(corners, triangle);
            }
        }
        return without(mesh, gone);
    }

    private static Mesh without(Mesh mesh, boolean[] gone) {
        var kept = new int[mesh.triangles().length];
        int count = 0;
        for (int triangle = 0; triangle < gone.length; triangle++) {
            if (!gone[triangle]) {
                System.arraycopy(mesh.triangles(), 3 * triangle, kept, count, 3);
                count += 3;
            }
        }
        return count == kept.length ? mesh : new Mesh(mesh.vertices(), Arrays.copyOf(kept, count));
    }

    private static Corners corners(int[] triangles, int triangle) {
        var three = Arrays.copyOfRange(triangles, 3 * triangle, 3 * triangle + 3);
        Arrays.sort(three);
        return new Corners(three[0], three[1], three[2]);
    }

    /** Whether its corners rise and fall in turn in the other sense: low, high, middle. */
    private static boolean isTurned(int[] triangles, int triangle) {
        int a = triangles[3 * triangle];
        int b = triangles[3 * triangle + 1];
        int c = triangles[3 * triangle + 2];
        return a < b ? c > a && c < b : !(c < a && c > b);
    }
}
