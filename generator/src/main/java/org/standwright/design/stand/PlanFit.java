package org.standwright.design.stand;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.column.Running;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.support.SupportPlan;
import org.standwright.geom.Grid;

/** The smallest plan that takes both the support below the carcass and the shortest drawers within it. */
public final class PlanFit {
    private final StandDesign design;
    private final SupportPlan support;

    PlanFit(StandDesign design, SupportPlan support) {
        this.design = design;
        this.support = support;
    }

    void check() {
        new PlaceFit(design).check();
        double depth = Math.max(support.leastPlan().depth(), depthForDrawers());
        large("depth", "deep", PlanSize.of(design).depth(), depth);
        large("width", "wide", PlanSize.of(design).width(), support.leastPlan().width());
    }

    private void large(String field, String word, double given, double least) {
        if (Grid.less(given, least)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/plan/" + field,
                    "A plan " + units.length(given) + " " + word
                            + " is too small for its support and its drawers: they take " + units.length(least) + ".",
                    List.of("Make the plan " + Exact.up(units, least) + " " + word + "."));
        }
    }

    private double depthForDrawers() {
        var drawers = design.drawers();
        double front =
                drawers.mount() == Mount.INSET ? drawers.front().material().thickness() : 0;
        return front
                + Running.of(design).leastRoom()
                + design.carcass().back().material().thickness();
    }
}
