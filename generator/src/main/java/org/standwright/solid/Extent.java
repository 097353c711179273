package org.standwright.solid;

import java.util.List;

/** A box along the axes, 1/1024 mm. */
record Extent(int x0, int y0, int z0, int x1, int y1, int z1) {
    /** What is not worth halving, 8 mm. */
    private static final int SHORT = 8 * Solid.PER_MM;

    /** The smallest box around all of {@code tools}, of which there is at least one. */
    static Extent around(List<? extends Tool> tools) {
        var around = tools.get(0).extent();
        for (int i = 1; i < tools.size(); i++) {
            around = around.union(tools.get(i).extent());
        }
        return around;
    }

    /** Whether the two share at least a point. */
    boolean touches(Extent other) {
        return x0 <= other.x1 && other.x0 <= x1 && y0 <= other.y1 && other.y0 <= y1 && z0 <= other.z1 && other.z0 <= z1;
    }

    /**
     * Two boxes that share a wall across its longest side; none if that is short. The wall stands at an odd place, where
     * few features have a face.
     */
    List<Extent> halved() {
        int x = x1 - x0;
        int y = y1 - y0;
        if (Math.max(x, y) < SHORT) {
            return List.of();
        }
        if (x >= y) {
            int middle = x0 + x / 2 | 1;
            return List.of(new Extent(x0, y0, z0, middle, y1, z1), new Extent(middle, y0, z0, x1, y1, z1));
        }
        int middle = y0 + y / 2 | 1;
        return List.of(new Extent(x0, y0, z0, x1, middle, z1), new Extent(x0, middle, z0, x1, y1, z1));
    }

    private Extent union(Extent other) {
        return new Extent(
                Math.min(x0, other.x0),
                Math.min(y0, other.y0),
                Math.min(z0, other.z0),
                Math.max(x1, other.x1),
                Math.max(y1, other.y1),
                Math.max(z1, other.z1));
    }
}
