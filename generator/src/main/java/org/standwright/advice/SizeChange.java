package org.standwright.advice;

import java.util.OptionalDouble;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.frame.PlanSize;

/**
 * A size that shrinks or grows. Where the plan follows from the margins around the machine, the margin behind it gives
 * way, or the one at its right as written.
 *
 * @param by how much larger, less than 0 for smaller, mm
 * @param most how far it may change that way, mm
 */
record SizeChange(Dimension dimension, double by, double most) implements Change {
    enum Dimension {
        WIDTH("narrower", "wider"),
        DEPTH("less deep", "deeper"),
        WORKING_HEIGHT("lower", "higher");

        private final String less;
        private final String more;

        Dimension(String less, String more) {
            this.less = less;
            this.more = more;
        }
    }

    @Override
    public StandDesign in(StandDesign design) {
        return switch (dimension) {
            case WIDTH -> wide(design);
            case DEPTH -> deep(design);
            case WORKING_HEIGHT -> design.at(new WorkingHeight.Given(height(design)));
        };
    }

    @Override
    public double size() {
        return Math.abs(by) / most;
    }

    @Override
    public String words(StandDesign before) {
        var units = before.unit();
        var then = switch (dimension) {
            case WIDTH -> PlanChange.width(before, width(before)).words();
            case DEPTH -> PlanChange.depth(before, depth(before)).words();
            case WORKING_HEIGHT -> "the working height " + units.length(height(before));
        };
        return units.length(Math.abs(by)) + " " + (by < 0 ? dimension.less : dimension.more) + ": " + then;
    }

    private double width(StandDesign design) {
        return PlanSize.of(design).width() + by;
    }

    private double depth(StandDesign design) {
        return PlanSize.of(design).depth() + by;
    }

    /** A height that was worked out from an elbow is built at a mark of the tape, and counts from there. */
    private double height(StandDesign design) {
        double now = design.workingHeight().height();
        boolean found = design.workingHeight() instanceof WorkingHeight.Elbow;
        return (found ? Exact.onTape(design.unit(), now) : now) + by;
    }

    private StandDesign wide(StandDesign design) {
        var margins = design.place().margins();
        boolean mirrored = design.layout() == Layout.MIRRORED;
        boolean both = margins.left().isPresent() && margins.right().isPresent();
        double adds = width(design) - PlanSize.following(design).width();
        var changed = new Place.Margins(
                margins.front(),
                margins.back(),
                both && mirrored ? larger(margins.left(), adds) : margins.left(),
                both && !mirrored ? larger(margins.right(), adds) : margins.right());
        var now = design.plan();
        return planned(design, changed, new Plan(given(now.width(), both, width(design)), now.depth()));
    }

    private StandDesign deep(StandDesign design) {
        var margins = design.place().margins();
        boolean both = margins.front().isPresent() && margins.back().isPresent();
        double adds = depth(design) - PlanSize.following(design).depth();
        var changed = new Place.Margins(
                margins.front(), both ? larger(margins.back(), adds) : margins.back(), margins.left(), margins.right());
        var now = design.plan();
        return planned(design, changed, new Plan(now.width(), given(now.depth(), both, depth(design))));
    }

    private static StandDesign planned(StandDesign design, Place.Margins margins, Plan plan) {
        var place = design.place();
        return Redesign.of(design)
                .place(new Place(place.turn(), margins, place.shims()))
                .plan(plan)
                .done();
    }

    private static OptionalDouble larger(OptionalDouble margin, double by) {
        return OptionalDouble.of(margin.getAsDouble() + by);
    }

    /** A size that was left out stays so where it follows from two margins. */
    private static OptionalDouble given(OptionalDouble now, boolean bothMargins, double then) {
        return now.isEmpty() && bothMargins ? now : OptionalDouble.of(then);
    }
}
