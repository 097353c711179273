package org.standwright.solid;

import java.util.List;

/** A box along the axes, 1/1024 mm. */
record Extent(int x0, int y0, int z0, int x1, int y1, int z1) {
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
