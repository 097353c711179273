package org.standwright.check.balance;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.check.Remedy;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Side;

/**
 * A carcass that is larger across the edge over which it tips. The plan then has a given size; of two margins that
 * it followed from the nearer or left one stays.
 *
 * @param by how much larger, mm
 */
record LargerPlan(Side side, double by) {
    Remedy remedy(StandDesign design) {
        var words = "the carcass " + design.unit().length(by) + (isDeeper() ? " deeper" : " wider");
        return Remedy.ofStand(words, now -> Optional.of(isDeeper() ? deeper(now) : wider(now)));
    }

    private boolean isDeeper() {
        return side == Side.FRONT || side == Side.BACK;
    }

    private StandDesign deeper(StandDesign design) {
        var margins = design.place().margins();
        var back = margins.front().isPresent() ? OptionalDouble.empty() : margins.back();
        double depth = PlanSize.of(design).depth() + by;
        return planned(
                design,
                new Place.Margins(margins.front(), back, margins.left(), margins.right()),
                new Plan(design.plan().width(), OptionalDouble.of(depth)));
    }

    private StandDesign wider(StandDesign design) {
        var margins = design.place().margins();
        var right = margins.left().isPresent() ? OptionalDouble.empty() : margins.right();
        double width = PlanSize.of(design).width() + by;
        return planned(
                design,
                new Place.Margins(margins.front(), margins.back(), margins.left(), right),
                new Plan(OptionalDouble.of(width), design.plan().depth()));
    }

    private static StandDesign planned(StandDesign design, Place.Margins margins, Plan plan) {
        var place = design.place();
        return Redesign.of(design)
                .place(new Place(place.turn(), margins, place.shims()))
                .plan(plan)
                .done();
    }
}
