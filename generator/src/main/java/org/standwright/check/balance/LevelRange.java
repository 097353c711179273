package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import org.standwright.design.Support;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Range;

/**
 * Whether levelers or shims take up the fall of the floor that was measured, and 5 mm more; where nobody measured, what
 * they can take up.
 */
public final class LevelRange implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "level-range",
            "Can it be levelled on this floor?",
            "range of levelers + range of shims >= fall + 5 mm",
            "The fall was measured over the stand's plan. A machine's own table that moves levels nothing.",
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
        return List.of(fall > 0 ? judged(loaded, fall) : Finding.note(TEXT, "height stack", words(loaded)));
    }

    private static double fall(StandDesign design) {
        double site = design.site().fall();
        return design.workingHeight() instanceof WorkingHeight.Beside beside ? Math.max(site, beside.fall()) : site;
    }

    private static Finding judged(LoadedStand loaded, double fall) {
        double range = levelling(loaded.design()).values().stream()
                .mapToDouble(each -> each.most() - each.least())
                .sum();
        return Finding.judged(
                        TEXT,
                        "height stack",
                        new Gauge(Quantity.LENGTH, range, Limit.cautionBelow(fall + MORE)),
                        words(loaded))
                .with(new Input("fall", "of the floor over the plan", Quantity.LENGTH, fall))
                .remedies(() -> shims(loaded, fall + MORE));
    }

    /** What can level it, from the floor up, each with the heights that it can be set to. */
    private static Map<String, Range> levelling(StandDesign design) {
        var ranges = new LinkedHashMap<String, Range>();
        if (design.support() instanceof Support.Levelers levelers) {
            ranges.put("levelers", levelers.leveler().height());
        }
        design.place().shims().ifPresent(shims -> ranges.put("shims", shims));
        return ranges;
    }

    private static String words(LoadedStand loaded) {
        var units = loaded.units();
        var levelling = levelling(loaded.design());
        if (levelling.isEmpty()) {
            return "Nothing in the height stack levels it: on a floor that falls, shim under the machine, or use "
                    + "levelers, where it has to be level with its neighbours.";
        }
        double height = loaded.stand().stack().workingHeight();
        double less = 0;
        double more = 0;
        for (var range : levelling.values()) {
            less += range.usual() - range.least();
            more += range.most() - range.usual();
        }
        return "Its " + String.join(" and ", levelling.keySet()) + " set the working height from "
                + units.length(height - less) + " to " + units.length(height + more) + ".";
    }

    /** Under a machine that stands on the worktop. */
    private static List<Remedy> shims(LoadedStand loaded, double range) {
        var remedies = new ArrayList<Remedy>();
        if (loaded.stand().machine().isPresent()) {
            remedies.add(Remedy.ofStand(
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
