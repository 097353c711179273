package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Place;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.HeightStack;
import org.standwright.design.kit.Range;

/**
 * Whether levelers or shims take up the fall of the floor that was measured, and 5 mm more; where nobody measured, what
 * they can take up.
 */
public final class LevelRange implements Rule {
    private static final RuleText TEXT = new RuleText(
            "level-range",
            "Can it be levelled on this floor?",
            "highest - lowest >= fall + 5 mm",
            "The fall was measured over the stand's plan.",
            "common practice, no source");

    /** mm. */
    private static final double MORE = 5;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        double fall = fall(loaded.design());
        var stack = loaded.stand().stack();
        return List.of(
                fall > 0 ? judged(loaded, stack, fall) : Finding.note(TEXT, "height stack", words(loaded, stack)));
    }

    private static double fall(StandDesign design) {
        double site = design.site().fall();
        return design.workingHeight() instanceof WorkingHeight.Beside beside ? Math.max(site, beside.fall()) : site;
    }

    private static Finding judged(LoadedStand loaded, HeightStack stack, double fall) {
        double range = stack.highest() - stack.lowest();
        return Finding.judged(
                        TEXT,
                        "height stack",
                        new Gauge(Quantity.LENGTH, range, Limit.cautionBelow(fall + MORE)),
                        words(loaded, stack))
                .with(new Input("fall", "of the floor over the plan", Quantity.LENGTH, fall))
                .remedies(() -> shims(loaded, fall + MORE));
    }

    private static String words(LoadedStand loaded, HeightStack stack) {
        var units = loaded.units();
        return stack.terms().stream().anyMatch(HeightStack.Term::isAdjustable)
                ? "The working height can be set from " + units.length(stack.lowest()) + " to "
                        + units.length(stack.highest()) + "."
                : "Nothing in the height stack can be adjusted: on a floor that falls, shim under the machine, or use "
                        + "levelers, where it has to be level with its neighbours.";
    }

    /** Under a machine that stands on the worktop. */
    private static List<Remedy> shims(LoadedStand loaded, double range) {
        var remedies = new ArrayList<Remedy>();
        if (loaded.stand().machine().isPresent()) {
            remedies.add(new Remedy(
                    "shims under the machine, up to " + loaded.units().length(range),
                    design -> Optional.of(shimmed(design, range))));
        }
        return remedies;
    }

    private static StandDesign shimmed(StandDesign design, double range) {
        var place = design.place();
        var shims = Optional.of(new Range(0, range / 2, range));
        return Redesign.of(design)
                .place(new Place(place.turn(), place.margins(), shims))
                .done();
    }
}
