package org.standwright.design.stand;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Slide;
import org.standwright.design.support.SupportPlan;
import org.standwright.geom.Grid;

/** The smallest plan that takes both the support below the carcass and the shortest slides within it. */
public final class PlanFit {
    private final StandDesign design;
    private final SupportPlan support;

    PlanFit(StandDesign design, SupportPlan support) {
        this.design = design;
        this.support = support;
    }

    void check() {
        new PlaceFit(design).check();
        double depth = Math.max(support.leastPlan().depth(), depthForSlides());
        large("depth", "deep", PlanSize.of(design).depth(), depth);
        large("width", "wide", PlanSize.of(design).width(), support.leastPlan().width());
    }

    private void large(String field, String word, double given, double least) {
        if (Grid.less(given, least)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/plan/" + field,
                    "A plan " + units.length(given) + " " + word
                            + " is too small for its support and its slides: they take " + units.length(least) + ".",
                    List.of("Make the plan " + Exact.up(units, least) + " " + word + "."));
        }
    }

    private double depthForSlides() {
        var drawers = design.drawers();
        double shortest = drawers.slide().lengths().stream()
                .mapToDouble(Slide.Size::length)
                .min()
                .orElseThrow();
        double front =
                drawers.mount() == Mount.INSET ? drawers.front().material().thickness() : 0;
        return front
                + drawers.slide().setBack()
                + shortest
                + drawers.slide().rearSpace()
                + design.carcass().back().material().thickness();
    }
}
