package org.standwright.viewer.scene.measure;

import java.util.HashMap;
import java.util.Map;
import org.standwright.solid.Solid;

/** Which triangles of a solid meet along an edge. */
final class Neighbours {
    private final Solid solid;
    private final Map<Long, Integer> owners = new HashMap<>();

    Neighbours(Solid solid) {
        this.solid = solid;
        for (int i = 0; i < 3 * solid.triangleCount(); i++) {
            owners.put(edge(i / 3, i % 3, i % 3 + 1), i / 3);
        }
    }

    /** The triangle beyond the side from corner {@code side} to the next. */
    int beyond(int triangle, int side) {
        return owners.get(edge(triangle, side + 1, side));
    }

    private long edge(int triangle, int from, int to) {
        return (long) solid.corner(triangle, from % 3) << 32 | solid.corner(triangle, to % 3);
    }
}
