package org.standwright.design.column;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanSize;
import org.standwright.geom.Grid;

/** Widths of the bays' openings: given ones as given, the others share what the panels leave. */
public final class BayWidths {
    /** Narrowest inside of a drawer box that still takes a hand, mm; common practice, no source. */
    public static final double LEAST_INSIDE = 60;

    private final StandDesign design;

    public BayWidths(StandDesign design) {
        this.design = design;
    }

    public List<Double> openings() {
        double given =
                design.bays().stream().mapToDouble(bay -> bay.width().orElse(0)).sum();
        long sharing =
                design.bays().stream().filter(bay -> bay.width().isEmpty()).count();
        double left = PlanSize.of(design).width() - panels() - given;
        if (sharing == 0) {
            closes(given, left);
        }
        if (left < 0) {
            throw tooWide(given, left);
        }
        double share = sharing == 0 ? 0 : left / sharing;
        for (int i = 0; i < design.bays().size(); i++) {
            wideEnough(i, design.bays().get(i).width().orElse(share));
        }
        return design.bays().stream().map(bay -> bay.width().orElse(share)).toList();
    }

    /** Two sides and the partitions. */
    private double panels() {
        return (design.bays().size() + 1) * design.carcass().sheet().material().thickness();
    }

    private void closes(double given, double left) {
        if (!Grid.same(left, 0)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/plan/width",
                    "The bays' openings and the panels between them add up to " + units.length(given + panels())
                            + ", but the plan is "
                            + units.length(PlanSize.of(design).width()) + " wide.",
                    List.of(
                            "Make the plan " + Exact.length(units, given + panels()) + " wide.",
                            "Or leave the width of one bay out: it takes what is left."));
        }
    }

    private ImpossibleDesignException tooWide(double given, double left) {
        var units = design.unit();
        return new ImpossibleDesignException(
                "/plan/width",
                "The given bays and the panels between them are " + units.length(given + panels())
                        + " wide together, more than the plan of "
                        + units.length(PlanSize.of(design).width()) + ".",
                List.of("Make the plan more than "
                        + Exact.up(units, PlanSize.of(design).width() - left) + " wide, or the bays narrower."));
    }

    private void wideEnough(int bay, double opening) {
        var drawers = design.drawers();
        double least = LEAST_INSIDE
                + 2 * drawers.box().material().thickness()
                + 2 * drawers.slide().sideSpace();
        if (Grid.less(opening, least)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    design.bays().get(bay).width().isPresent() ? "/bays/" + bay + "/width" : "/plan/width",
                    "Bay " + (bay + 1) + " has an opening of " + units.length(opening)
                            + ", too narrow for a drawer on these slides: it takes " + units.length(least)
                            + " or more.",
                    List.of("Make the plan "
                            + Exact.up(units, PlanSize.of(design).width() + (least - opening) * sharing(bay))
                            + " wide, or use fewer bays."));
        }
    }

    private long sharing(int bay) {
        return design.bays().get(bay).width().isPresent()
                ? 1
                : design.bays().stream()
                        .filter(other -> other.width().isEmpty())
                        .count();
    }
}
