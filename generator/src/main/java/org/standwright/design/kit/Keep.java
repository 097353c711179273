package org.standwright.design.kit;

import org.standwright.geom.Grid;
import org.standwright.geom.Require;

/** The smallest offcut that is worth a place on the rack, mm; it may lie either way round. */
public record Keep(double length, double width) {
    /** Common practice, no source. */
    public static final Keep USUAL = new Keep(300, 100);

    public Keep {
        Require.positive("least length to keep", length, "stock");
        Require.positive("least width to keep", width, "stock");
    }

    /** Whether a rest of this size is kept. */
    public boolean isWorth(double restLength, double restWidth) {
        return !Grid.less(Math.max(restLength, restWidth), Math.max(length, width))
                && !Grid.less(Math.min(restLength, restWidth), Math.min(length, width));
    }
}
