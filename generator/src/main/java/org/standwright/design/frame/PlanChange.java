package org.standwright.design.frame;

import java.util.OptionalDouble;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;

/**
 * What to write so that the carcass becomes as wide or as deep as a message says: a size of the plan, or a margin where
 * the size follows from both margins across it.
 *
 * @param field JSON pointer of the field to change
 * @param words 'the plan 640 mm wide'
 */
public record PlanChange(String field, String words) {
    private static final String MARGINS = "/place/margins";

    /** @param mm the width wanted */
    public static PlanChange width(StandDesign design, double mm) {
        var margins = design.place().margins();
        return new Across(
                        design,
                        "width",
                        "wide",
                        design.plan().width(),
                        PlanSize.following(design).width())
                .to(mm, margins.left(), margins.right(), design.layout() == Layout.MIRRORED ? "left" : "right");
    }

    /** @param mm the depth wanted */
    public static PlanChange depth(StandDesign design, double mm) {
        var margins = design.place().margins();
        return new Across(
                        design,
                        "depth",
                        "deep",
                        design.plan().depth(),
                        PlanSize.following(design).depth())
                .to(mm, margins.front(), margins.back(), "back");
    }

    private record Across(StandDesign design, String name, String word, OptionalDouble given, double following) {
        PlanChange to(double mm, OptionalDouble near, OptionalDouble far, String farName) {
            var plan = "the plan " + shown(mm) + " " + word;
            if (near.isEmpty() || far.isEmpty()) {
                return new PlanChange("/plan/" + name, plan);
            }
            var margin = "the " + farName + " margin " + shown(far.getAsDouble() + mm - following);
            return given.isEmpty()
                    ? new PlanChange(MARGINS, margin)
                    : new PlanChange("/plan/" + name, plan + " and " + margin);
        }

        /** As the tape shows it, or exactly. */
        private String shown(double mm) {
            var units = design.unit();
            return Grid.same(Exact.onTape(units, mm), mm) ? units.length(mm) : Exact.length(units, mm);
        }
    }
}
