package org.standwright.check.handling;

import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.unit.Units;

/**
 * Lifting the machine onto the stand by the NIOSH equation: lifting index = mass / RWL, at most 1. Assumed: from a bench
 * or cart 750 mm high to the top of the worktop, where it is set down with care, so that the height there counts; hands
 * 400 mm in front of the ankles; no turn, a rare lift with a good grip.
 */
public final class MachineLifting implements Rule {
    private static final RuleText TEXT = RuleText.plain(
            "machine-lifting", "Who lifts the machine onto the stand?", "NIOSH lifting equation, Pub. 94-110");

    /** mm. */
    static final double REACH = 400;
    /** Bench or cart that the machine is lifted from, mm. */
    static final double FROM = 750;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var design = stand.design();
        double worktop = stand.worktop().max().z();
        var form = design.unit() == Units.MM ? LiftingEquation.METRIC : LiftingEquation.US;
        double limit = form.limitInKilograms(REACH, worktop, Math.abs(worktop - FROM));
        return loaded.design().machine().mass() > limit
                ? List.of(finding(design, worktop, loaded.design().machine().mass(), limit))
                : List.of();
    }

    private static Finding finding(StandDesign design, double worktop, double mass, double limit) {
        var units = design.unit();
        var who = mass > 2 * limit
                ? "Use a hoist: that is too much even for each of two persons"
                : "Lift it with two persons or a hoist";
        var casters = design.support() instanceof Support.Casters ? "; lock the casters first." : ".";
        return Finding.caution(
                TEXT,
                design.machine().name(),
                "It weighs " + units.mass(mass) + ". From a bench or cart " + units.length(FROM)
                        + " high to the worktop at " + units.length(worktop) + ", hands " + units.length(REACH)
                        + " in front of the ankles, one person should lift " + units.mass(limit)
                        + " at most: a lifting index of "
                        + String.format(Locale.ROOT, "%.1f", mass / limit) + ". " + who
                        + casters);
    }
}
