package org.standwright.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The triangles round each vertex of a solid. */
final class Fans {
    private Fans() {}

    /** How many vertices have triangles that don't form one closed fan. */
    static long broken(Solid solid) {
        var fans = new ArrayList<Map<Integer, Integer>>();
        var triangles = new int[solid.vertexCount()];
        for (int i = 0; i < solid.vertexCount(); i++) {
            fans.add(new HashMap<>());
        }
        for (int t = 0; t < solid.triangleCount(); t++) {
            for (int i = 0; i < 3; i++) {
                int at = solid.corner(t, i);
                fans.get(at).put(solid.corner(t, (i + 1) % 3), solid.corner(t, (i + 2) % 3));
                triangles[at]++;
            }
        }
        return broken(fans, triangles);
    }

    private static long broken(List<Map<Integer, Integer>> fans, int[] triangles) {
        long broken = 0;
        for (int i = 0; i < triangles.length; i++) {
            broken += turnsOnce(fans.get(i), triangles[i]) ? 0 : 1;
        }
        return broken;
    }

    /** Whether going from each triangle to the next comes back after exactly all of them. */
    private static boolean turnsOnce(Map<Integer, Integer> next, int triangles) {
        if (next.size() != triangles || triangles < 3) {
            return false;
        }
        int first = next.keySet().iterator().next();
        int at = first;
        int steps = 0;
        do {
            var on = next.get(at);
            if (on == null) {
                return false;
            }
            at = on;
            steps++;
        } while (at != first && steps <= triangles);
        return steps == triangles;
    }
}
