package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;

/**
 * A working height that follows a surface beside it: prints the height and what it can be set to. An outfeed surface
 * lies 0 to 3 mm (1/8 in) below the table before it, never above, or boards catch on its edge.
 */
public final class NeighbourLevel implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "neighbour-level",
            "Is it level with its neighbour?",
            "b = height of the surface - working height",
            "The surface was measured on the same floor.",
            "guides to outfeed tables; common practice");

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
                ? findings(stand, beside)
                : List.of();
    }

    /** What it can be set to is worth reading even where all is well. */
    private static List<Finding> findings(Stand stand, WorkingHeight.Beside beside) {
        var gauge = new Gauge(Quantity.LENGTH, beside.below(), Limit.cautionAbove(LOWEST_OUTFEED));
        var message = words(stand, beside);
        var judged = Finding.judged(TEXT, beside.surface(), gauge, message)
                .with(
                        new Input("b", "below that surface", Quantity.LENGTH, beside.below()),
                        new Input("surface", "its height", Quantity.LENGTH, beside.surfaceHeight()));
        return judged.isWorthSaying()
                ? List.of(judged)
                : List.of(judged, Finding.note(TEXT, beside.surface(), message));
    }

    private static String words(Stand stand, WorkingHeight.Beside beside) {
        var units = stand.design().unit();
        var stack = stand.stack();
        return units.length(stack.workingHeight()) + ", " + place(stand, beside) + " (at "
                + units.length(beside.surfaceHeight()) + "); it can be set from "
                + units.length(stack.lowest()) + " to " + units.length(stack.highest())
                + ". For an outfeed keep it 0 to " + units.length(LOWEST_OUTFEED)
                + " below the table before it, never above.";
    }

    private static String place(Stand stand, WorkingHeight.Beside beside) {
        if (Grid.same(beside.below(), 0)) {
            return "level with " + beside.surface();
        }
        return stand.design().unit().length(beside.below()) + " below " + beside.surface();
    }
}
