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
import org.standwright.design.Support;

/** How hard sides and partitions press on what they stand on: the worst of them. */
public final class SideBearing implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "side-bearing",
            "Do sides and partitions bear the load?",
            "stress = N / (t d)",
            "Each carries its share of everything beside it, by levers, and stands on its lower edge; what lies over the toe"
                    + " space of a plinth does not count.",
            "caution above 1 N/mm\u00b2: our own choice, far below any board's bending strength (11 N/mm\u00b2 and more, EN 312 P2, as"
                    + " data sheets quote it)");

    private static final Limit LIMIT = Limit.cautionAbove(1);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var carried = new UprightLoads(loaded);
        return Uprights.of(loaded.stand()).all().stream()
                .max(Comparator.comparingDouble(upright -> stress(upright, carried, loaded)))
                .map(worst -> List.of(finding(worst, carried, loaded)))
                .orElseGet(List::of);
    }

    private static double stress(PlacedPart upright, UprightLoads carried, LoadedStand loaded) {
        return carried.of(upright) / (upright.part().thickness() * depth(upright, loaded));
    }

    private static double depth(PlacedPart upright, LoadedStand loaded) {
        double toeSpace = loaded.design().support() instanceof Support.Plinth plinth ? plinth.toeSpace() : 0;
        return upright.box().size().y() - toeSpace;
    }

    private static Finding finding(PlacedPart worst, UprightLoads carried, LoadedStand loaded) {
        double stress = stress(worst, carried, loaded);
        return Finding.judged(
                        TEXT,
                        worst.label(),
                        new Gauge(Quantity.STRESS, stress, LIMIT),
                        "It carries " + loaded.units().force(carried.of(worst)) + ", "
                                + Quantity.STRESS.words(stress, loaded.units()) + " on its lower edge.")
                .with(
                        new Input("N", "what it carries", Quantity.FORCE, carried.of(worst)),
                        new Input(
                                "t", "thickness", Quantity.LENGTH, worst.part().thickness()),
                        new Input("d", "depth that it stands on", Quantity.LENGTH, depth(worst, loaded)))
                .remedies(List.of(Stiffer.thickerCarcass(loaded.design())));
    }
}
