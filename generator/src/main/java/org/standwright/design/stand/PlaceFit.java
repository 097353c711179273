package org.standwright.design.stand;

import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Layout;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.PlanSize;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Grid;

/** Whether the plan, the machine's base and its margins go together. */
final class PlaceFit {
    private final StandDesign design;

    PlaceFit(StandDesign design) {
        this.design = design;
    }

    /** @param least the smallest plan, for a size that has to be said */
    void check(Size2 least) {
        shims();
        var plan = design.plan();
        var following = PlanSize.following(design);
        var margins = design.place().margins();
        boolean mirrored = design.layout() == Layout.MIRRORED;
        sized("width", "wide", plan.width(), least.width());
        sized("depth", "deep", plan.depth(), least.depth());
        adds(
                "width",
                "wide",
                plan.width(),
                following.width(),
                mirrored ? "right" : "left",
                margins.left(),
                mirrored ? "left" : "right",
                margins.right());
        adds("depth", "deep", plan.depth(), following.depth(), "front", margins.front(), "back", margins.back());
    }

    private boolean onWorktop() {
        return design.machine().reference().kind() != Reference.Kind.WORKTOP;
    }

    private void shims() {
        if (design.place().shims().isPresent() && !onWorktop()) {
            throw new ImpossibleDesignException(
                    "/place/shims",
                    "There is nothing to put shims under: the work surface is the stand's own worktop.",
                    List.of("Leave the shims out, or stand it on levelers."));
        }
    }

    /** A size that is left out needs a base to follow. */
    private void sized(String field, String word, OptionalDouble given, double least) {
        if (given.isEmpty() && !onWorktop()) {
            throw new ImpossibleDesignException(
                    "/plan/" + field,
                    "The plan has no " + field + ", and no machine's base to follow: the work surface is the stand's"
                            + " own worktop.",
                    List.of("Say how " + word + " the carcass is: " + Exact.up(design.unit(), least) + " or more."));
        }
    }

    /** A size given with both margins across it has to agree with them. */
    private void adds(
            String field,
            String word,
            OptionalDouble given,
            double following,
            String nearName,
            OptionalDouble near,
            String farName,
            OptionalDouble far) {
        if (given.isEmpty() || near.isEmpty() || far.isEmpty() || Grid.same(given.getAsDouble(), following)) {
            return;
        }
        var units = design.unit();
        double more = given.getAsDouble() - following;
        throw new ImpossibleDesignException(
                "/place/margins",
                "The machine's base with its margins and the overhang makes a plan " + units.length(following) + " "
                        + word + ", but the " + field + " is given as " + units.length(given.getAsDouble()) + ".",
                List.of(
                        "Make the " + farName + " margin " + Exact.length(units, far.getAsDouble() + more) + ".",
                        "Or make the " + nearName + " margin " + Exact.length(units, near.getAsDouble() + more) + ".",
                        "Or make the plan " + Exact.length(units, following) + " " + word + ".",
                        "Or leave one of them out."));
    }
}
