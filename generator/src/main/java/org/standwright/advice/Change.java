package org.standwright.advice;

import org.standwright.design.StandDesign;

/** One thing that a maker would do differently. */
public sealed interface Change permits SizeChange, FewerDrawers, SheetSwap, FreedGrain, SplitBack {
    /** What a choice counts that changes how the stand looks, but not its sizes. */
    double LOOKS = 0.5;

    /** The design with this change. */
    StandDesign in(StandDesign design);

    /**
     * How large it is beside others: 0 for another board of the stand as it is, 1/2 where it only looks different, the
     * share of what is allowed for a size, 1 for each drawer.
     */
    double size();

    /** What is different, and what to write: '4 mm less deep: the plan 556 mm deep'. */
    String words(StandDesign before);
}
