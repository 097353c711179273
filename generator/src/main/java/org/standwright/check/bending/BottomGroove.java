package org.standwright.check.bending;

import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** Whether the groove holds a drawer's bottom: how deep it sits in it, and the wood below it, in the worst drawer. */
public final class BottomGroove implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "bottom-groove",
            "Do the grooves hold the drawer bottoms?",
            "shear = 1.5 gamma q b / lip",
            "The edge's greatest reaction bears on the wood below the groove, over its whole height.",
            "reaction: Roark table 11.4 case 1a; engagement of a third of the side or 4 mm, and as much wood below the"
                    + " groove as the bottom is thick: common practice, no source; 1 N/mm\u00b2 of shear: our own choice, far"
                    + " below any board's bending strength");

    private static final double ENGAGEMENT = 4;
    private static final double SHARE_OF_SIDE = 1.0 / 3;
    private static final double SHEAR = 1;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return DrawerBottom.of(loaded).stream()
                .max(Comparator.comparingDouble(DrawerBottom::lipShear))
                .map(worst -> List.of(shear(worst, loaded), engagement(worst, loaded), lip(worst, loaded)))
                .orElseGet(List::of);
    }

    private static Finding shear(DrawerBottom worst, LoadedStand loaded) {
        double reaction = worst.plate().reaction(worst.pressure());
        return Finding.judged(
                        TEXT,
                        worst.label(),
                        new Gauge(Quantity.STRESS, worst.lipShear(), Limit.cautionAbove(SHEAR)),
                        "Its bottom bears on the groove with "
                                + Quantity.LINE_LOAD.words(reaction, loaded.units())
                                + ", a shear of " + Quantity.STRESS.words(worst.lipShear(), loaded.units())
                                + " in the wood below it.")
                .with(
                        new Input("gamma q b", "reaction of the edge", Quantity.LINE_LOAD, reaction),
                        new Input("lip", "wood below the groove", Quantity.LENGTH, worst.lip()));
    }

    private static Finding engagement(DrawerBottom worst, LoadedStand loaded) {
        double least = Math.min(ENGAGEMENT, SHARE_OF_SIDE * worst.side().part().thickness());
        return Finding.judged(
                TEXT,
                "drawer bottoms in their grooves",
                new Gauge(Quantity.LENGTH, worst.engagement(), Limit.cautionBelow(least)),
                "They reach " + loaded.units().length(worst.engagement()) + " into the sides.");
    }

    private static Finding lip(DrawerBottom worst, LoadedStand loaded) {
        double thickness = worst.part().part().thickness();
        return Finding.judged(
                TEXT,
                "wood below the grooves",
                new Gauge(Quantity.LENGTH, worst.lip(), Limit.cautionBelow(thickness)),
                loaded.units().length(worst.lip()) + " of wood are left below the grooves for bottoms of "
                        + loaded.units().length(thickness) + ".");
    }
}
