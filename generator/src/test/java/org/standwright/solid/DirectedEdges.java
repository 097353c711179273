package org.standwright.solid;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Directed edges of a solid by the numbers of its vertices. */
final class DirectedEdges {
    private DirectedEdges() {}

    static long occurringMoreThanOnce(Solid solid) {
        return counts(solid).values().stream().filter(count -> count > 1).count();
    }

    private static Map<List<Integer>, Integer> counts(Solid solid) {
        var counts = new HashMap<List<Integer>, Integer>();
        for (int t = 0; t < solid.triangleCount(); t++) {
            for (int i = 0; i < 3; i++) {
                counts.merge(List.of(solid.corner(t, i), solid.corner(t, (i + 1) % 3)), 1, Integer::sum);
            }
        }
        return counts;
    }
}
