package org.standwright.design.column;

import java.util.List;
import org.standwright.design.Bay;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;
import org.standwright.geom.Grid;

/** Widths of the bays' openings: given ones as given, the others share what the panels leave. */
public final class BayWidths {
    private final StandDesign design;
    private final LeastWidths least;

    public BayWidths(StandDesign design) {
        this.design = design;
        this.least = new LeastWidths(design);
    }

    /** Those of the carcass, from left to right. */
    public List<Double> openings() {
        var bays = design.bays();
        double opening = PlanSize.of(design).width() - 2 * panel();
        double left = left(bays, opening);
        if (sharing(bays) == 0) {
            closes(opening, left);
        }
        if (Grid.less(left, 0)) {
            throw tooWide(opening, left);
        }
        var openings = shared(bays, left);
        for (int i = 0; i < bays.size(); i++) {
            wideEnough(i, openings.get(i), opening);
        }
        return openings;
    }

    /**
     * Those of the bays side by side in an opening of this width, which is wide enough for them unless they were given
     * widths that do not fit.
     */
    List<Double> within(List<BayPlace> places, List<Bay> bays, double opening) {
        var nested = new NestedWidths(design, places, bays, opening);
        double left = left(bays, opening);
        nested.check(left, sharing(bays));
        return shared(bays, left);
    }

    private double panel() {
        return design.carcass().sheet().material().thickness();
    }

    /** What the given bays and the partitions leave of an opening. */
    private double left(List<Bay> bays, double opening) {
        double given = bays.stream().mapToDouble(bay -> bay.width().orElse(0)).sum();
        return opening - (bays.size() - 1) * panel() - given;
    }

    private static long sharing(List<Bay> bays) {
        return bays.stream().filter(bay -> bay.width().isEmpty()).count();
    }

    private static List<Double> shared(List<Bay> bays, double left) {
        double share = left / Math.max(1, sharing(bays));
        return bays.stream().map(bay -> bay.width().orElse(share)).toList();
    }

    private void closes(double opening, double left) {
        if (!Grid.same(left, 0)) {
            var units = design.unit();
            int last = design.bays().size() - 1;
            var change = PlanChange.width(design, plan(opening - left));
            throw new ImpossibleDesignException(
                    left < 0 ? change.field() : "/bays/" + last + "/width",
                    "The bays' openings and the panels between them add up to " + units.length(plan(opening - left))
                            + ", but the plan is " + units.length(plan(opening)) + " wide.",
                    List.of(
                            left < 0
                                    ? "Make " + change.words() + "."
                                    : "Make bay " + (last + 1) + " " + Exact.length(units, lastWidth() + left)
                                            + " wide.",
                            "Or leave the width of one bay out: it takes what is left."));
        }
    }

    private double lastWidth() {
        var bays = design.bays();
        return bays.get(bays.size() - 1).width().orElseThrow();
    }

    private ImpossibleDesignException tooWide(double opening, double left) {
        var units = design.unit();
        var change = PlanChange.width(design, Exact.onTapeUp(units, leastPlan()));
        return new ImpossibleDesignException(
                change.field(),
                "The given bays and the panels between them are " + units.length(plan(opening - left))
                        + " wide together, more than the plan of " + units.length(plan(opening)) + ".",
                List.of("Make " + change.words() + ", or the bays narrower."));
    }

    private void wideEnough(int bay, double width, double opening) {
        var here = design.bays().get(bay);
        double needed = here.width().isPresent() ? least.written(here) : least.of(here);
        if (!Grid.less(width, needed)) {
            return;
        }
        var units = design.unit();
        boolean given = here.width().isPresent();
        double all = least.sideBySide(design.bays());
        boolean exact = sharing(design.bays()) == 0;
        var plan = PlanChange.width(design, exact ? plan(all) : Exact.onTapeUp(units, plan(all)));
        var way = given ? "Make it " + (exact ? Exact.length(units, needed) : Exact.up(units, needed)) + " wide" : "";
        if (!given || exact || Grid.less(opening, all)) {
            way += (given ? " and " : "Make ") + plan.words();
        }
        throw new ImpossibleDesignException(
                given ? "/bays/" + bay + "/width" : plan.field(),
                "Bay " + (bay + 1) + " has an opening of " + units.length(width)
                        + ", too narrow for what stands in it: that takes " + units.length(needed) + " or more.",
                List.of(way + (given ? "." : ", or use fewer bays.")));
    }

    /** The narrowest plan that has room for the bays, mm. */
    public double leastPlan() {
        return plan(least.sideBySide(design.bays()));
    }

    private double plan(double opening) {
        return opening + 2 * panel();
    }
}
