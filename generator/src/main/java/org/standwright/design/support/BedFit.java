package org.standwright.design.support;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;
import org.standwright.geom.Grid;

/** Whether a plan that is wide enough for what stands on the floor is wide enough for its bed, too. */
final class BedFit {
    private BedFit() {}

    /** Refuses a bed too wide for a plan that the other one would go under. */
    static void check(StandDesign design, SupportBed bed, double leastOfItems) {
        double width = PlanSize.of(design).width();
        if (Grid.less(width, bed.leastWidth()) && !Grid.less(width, leastOfItems)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/support/bed",
                    "Two strips of " + units.length(bed.leastWidth() / 2) + " do not lie side by side under a plan "
                            + units.length(width) + " wide.",
                    List.of(
                            "Use a doubled-bottom.",
                            "Or make "
                                    + PlanChange.width(design, Exact.onTapeUp(units, bed.leastWidth()))
                                            .words()
                                    + "."));
        }
    }
}
