package org.standwright.check.bending;

import java.util.Comparator;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.geom.Axis;

/** How far sides and partitions are from buckling: the worst of them. */
public final class SideBuckling implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "side-buckling",
            "Do sides and partitions buckle?",
            "factor = pi^2 E I / (L^2 N)",
            "Free to turn at top and bottom, held by nothing between them. Each carries its share of everything beside it,"
                    + " by levers.",
            "Euler; caution below a factor of 3: our own choice");

    private static final Limit LIMIT = Limit.cautionBelow(3);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var carried = new UprightLoads(loaded);
        return Uprights.of(loaded.stand()).all().stream()
                .filter(upright -> carried.of(upright) > 0)
                .min(Comparator.comparingDouble(upright -> factor(upright, carried)))
                .map(worst -> List.of(finding(worst, carried, loaded)))
                .orElseGet(List::of);
    }

    private static double factor(PlacedPart upright, UprightLoads carried) {
        return Strut.buckling(stiffness(upright), length(upright)) / carried.of(upright);
    }

    private static double stiffness(PlacedPart upright) {
        double depth = upright.box().size().y();
        return GrainWay.section(upright, Axis.Z_PLUS, depth).stiffness();
    }

    private static double length(PlacedPart upright) {
        return upright.box().size().z();
    }

    private static Finding finding(PlacedPart worst, UprightLoads carried, LoadedStand loaded) {
        var units = loaded.units();
        double factor = factor(worst, carried);
        return Finding.judged(
                        TEXT,
                        worst.label(),
                        new Gauge(Quantity.RATIO, factor, LIMIT),
                        "It would buckle under " + Quantity.RATIO.words(factor, units) + " times the "
                                + units.force(carried.of(worst)) + " that it carries.")
                .with(
                        new Input("E I", "stiffness", Quantity.STIFFNESS, stiffness(worst)),
                        new Input("L", "height", Quantity.LENGTH, length(worst)),
                        new Input("N", "what it carries", Quantity.FORCE, carried.of(worst)))
                .remedies(List.of(Stiffer.thickerCarcass(loaded.design())));
    }
}
