package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;

/**
 * A working height that follows a surface beside it: prints the height and what it can be set to. An outfeed surface
 * lies 0 to 3 mm (1/8 in) below the table before it, never above, or boards catch on its edge.
 */
public final class NeighbourLevel implements Rule {
    private static final RuleText TEXT = RuleText.plain(
            "neighbour-level", "Is it level with its neighbour?", "guides to outfeed tables; common practice");

    /** mm. */
    private static final double LOWEST_OUTFEED = 3;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        return stand.design().workingHeight() instanceof WorkingHeight.Beside beside
                ? List.of(finding(stand, beside))
                : List.of();
    }

    private static Finding finding(Stand stand, WorkingHeight.Beside beside) {
        var units = stand.design().unit();
        var stack = stand.stack();
        boolean off = Grid.less(LOWEST_OUTFEED, beside.below());
        var message = units.length(stack.workingHeight()) + ", " + place(stand, beside) + " (at "
                + units.length(beside.surfaceHeight()) + "); it can be set from "
                + units.length(stack.lowest()) + " to " + units.length(stack.highest())
                + ". For an outfeed keep it 0 to " + units.length(LOWEST_OUTFEED)
                + " below the table before it, never above.";
        return off ? Finding.caution(TEXT, beside.surface(), message) : Finding.note(TEXT, beside.surface(), message);
    }

    private static String place(Stand stand, WorkingHeight.Beside beside) {
        if (Grid.same(beside.below(), 0)) {
            return "level with " + beside.surface();
        }
        return stand.design().unit().length(beside.below()) + " below " + beside.surface();
    }
}
