package org.standwright.design.frame;

import org.standwright.design.StandDesign;
import org.standwright.design.kit.Size2;

/** Outline of the carcass: sizes as given, others from the machine's turned base, its margins and the overhang. */
public final class PlanSize {
    private PlanSize() {}

    /** Width and depth, mm. */
    public static Size2 of(StandDesign design) {
        var base = design.machine().base();
        boolean across = design.place().turn() % 180 != 0;
        var margins = design.place().margins();
        var over = design.worktop().overhang();
        double width = (across ? base.depth() : base.width())
                + margins.left().orElse(0)
                + margins.right().orElse(0)
                - over.left()
                - over.right();
        double depth = (across ? base.width() : base.depth())
                + margins.front().orElse(0)
                + margins.back().orElse(0)
                - over.front()
                - over.back();
        return new Size2(
                design.plan().width().orElse(width), design.plan().depth().orElse(depth));
    }
}
