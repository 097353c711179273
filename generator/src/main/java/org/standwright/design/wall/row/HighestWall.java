package org.standwright.design.wall.row;

import java.util.List;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.area.WallOutline;
import org.standwright.geom.Grid;

/** How high the highest wall of a design reaches. */
final class HighestWall {
    private final WallDesign design;
    private final double top;

    HighestWall(WallDesign design) {
        this.design = design;
        this.top = IntStream.range(0, design.walls().size())
                .mapToDouble(i -> WallOutline.of(design.walls().get(i), design.unit(), "/walls/" + i)
                        .bounds()
                        .y1())
                .max()
                .orElse(0);
    }

    /** Refuses a lowest row with no wall left above it for a hanger that goes in. */
    void holds(double lowest) {
        var cleat = design.cleat();
        var units = design.unit();
        double above = cleat.hangerAbove() + cleat.headroom();
        if (!Grid.less(top, lowest + above)) {
            return;
        }
        double least = cleat.height() + above;
        throw new ImpossibleDesignException(
                "/rows/lowest",
                "Above the lowest row at " + units.length(lowest) + " a hanger needs " + units.length(above)
                        + " to go in, but no wall is higher than " + units.length(top) + ".",
                List.of(
                        Grid.less(top, least)
                                ? "Strip and hanger together need a wall " + Exact.up(units, least) + " high or more."
                                : "Lower it to "
                                        + Exact.length(
                                                units, Math.max(cleat.height(), Exact.onTapeDown(units, top - above)))
                                        + " or less."));
    }
}
