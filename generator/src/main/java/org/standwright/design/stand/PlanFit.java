package org.standwright.design.stand;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.column.BayWidths;
import org.standwright.design.column.Running;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Size2;
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

    /** The smallest plan, mm. */
    Size2 least() {
        return new Size2(
                Math.max(support.leastPlan().width(), new BayWidths(design).leastPlan()),
                Math.max(support.leastPlan().depth(), depthForDrawers()));
    }

    void check() {
        var least = least();
        double depth = least.depth();
        double width = least.width();
        new PlaceFit(design).check(least);
        var plan = PlanSize.of(design);
        if (Grid.less(plan.depth(), depth)) {
            throw tooSmall("deep", plan.depth(), depth, PlanChange.depth(design, up(depth)));
        }
        if (Grid.less(plan.width(), support.leastPlan().width())) {
            throw tooSmall("wide", plan.width(), width, PlanChange.width(design, up(width)));
        }
    }

    private ImpossibleDesignException tooSmall(String word, double now, double least, PlanChange way) {
        var units = design.unit();
        return new ImpossibleDesignException(
                way.field(),
                "A plan " + units.length(now) + " " + word + " is too small for its support and its drawers: they take "
                        + units.length(least) + ".",
                List.of("Make " + way.words() + "."));
    }

    private double up(double mm) {
        return Exact.onTapeUp(design.unit(), mm);
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
