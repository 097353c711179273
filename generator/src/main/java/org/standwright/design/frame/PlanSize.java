package org.standwright.design.frame;

import org.standwright.design.StandDesign;
import org.standwright.design.kit.Size2;

/**
 * Outline of the carcass: sizes as given, others from the machine's turned base, its margins and the overhang. A margin
 * that is left out counts 0 then.
 */
public final class PlanSize {
    private PlanSize() {}

    /** Width and depth, mm. */
    public static Size2 of(StandDesign design) {
        var following = following(design);
        return new Size2(
                design.plan().width().orElse(following.width()),
                design.plan().depth().orElse(following.depth()));
    }

    /** Width and depth that follow from the machine's base, given or not, mm. */
    public static Size2 following(StandDesign design) {
        var base = new TurnedBase(design.machine().base(), design.place().turn()).size();
        var margins = design.place().margins();
        var over = design.worktop().overhang();
        double width = base.width() + margins.left().orElse(0) + margins.right().orElse(0) - over.left() - over.right();
        double depth = base.depth() + margins.front().orElse(0) + margins.back().orElse(0) - over.front() - over.back();
        return new Size2(width, depth);
    }
}
