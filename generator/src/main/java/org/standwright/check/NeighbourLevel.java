package org.standwright.check;

import java.util.List;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;

/**
 * A working height that follows a surface beside it: prints the height and what it can be set to. An outfeed surface
 * lies 0 to 3 mm (1/8 in) below the table before it, never above, or boards catch on its edge.
 */
final class NeighbourLevel implements Rule {
    /** mm. */
    private static final double LOWEST_OUTFEED = 3;

    @Override
    public List<Finding> check(Stand stand, Load load) {
        return stand.design().workingHeight() instanceof WorkingHeight.Beside beside
                ? List.of(finding(stand, beside))
                : List.of();
    }

    private static Finding finding(Stand stand, WorkingHeight.Beside beside) {
        var units = stand.design().unit();
        var stack = stand.stack();
        boolean off = Grid.less(LOWEST_OUTFEED, beside.below());
        return new Finding(
                off ? Severity.CAUTION : Severity.NOTE,
                "neighbour-level",
                beside.surface(),
                units.length(stack.workingHeight()) + ", " + place(stand, beside) + " (at "
                        + units.length(beside.surfaceHeight()) + "); it can be set from "
                        + units.length(stack.lowest()) + " to " + units.length(stack.highest())
                        + ". For an outfeed keep it 0 to " + units.length(LOWEST_OUTFEED)
                        + " below the table before it, never above.",
                "guides to outfeed tables; common practice");
    }

    private static String place(Stand stand, WorkingHeight.Beside beside) {
        if (Grid.same(beside.below(), 0)) {
            return "level with " + beside.surface();
        }
        return stand.design().unit().length(beside.below()) + " below " + beside.surface();
    }
}
