package org.standwright.check.handling;

import java.util.List;
import java.util.Locale;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;

/**
 * Lifting the machine onto the stand by the NIOSH equation: lifting index = mass / RWL, at most 1. From a bench or cart
 * to the top of the worktop, where it is set down with care, so that the height there counts. Bench, reach and grip are
 * common practice, no source.
 */
public final class MachineLifting implements Rule {
    private static final RuleText TEXT = new RuleText(
            "machine-lifting",
            "Can one person lift the machine onto the stand?",
            Lift.FORMULA,
            "From a bench or cart 750 mm high, hands 400 mm in front of the ankles, no turn, a rare lift with a good grip.",
            Lift.SOURCE);

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
        var name = loaded.design().machine().name();
        double mass = loaded.design().machine().mass();
        double worktop = loaded.stand().worktop().max().z();
        var lift = new Lift(REACH, worktop, Math.abs(worktop - FROM));
        return List.of(lift.judged(TEXT, name, words(loaded, lift), mass, 1, loaded.units())
                .orElseGet(() -> Finding.caution(
                        TEXT,
                        name,
                        "Nobody should lift anything to the worktop at "
                                + loaded.units().length(worktop) + ", above the reach of the lifting equation. Use a "
                                + "hoist" + locked(loaded))));
    }

    private static String words(LoadedStand loaded, Lift lift) {
        var units = loaded.units();
        double mass = loaded.design().machine().mass();
        double limit = lift.limit(units);
        return "It weighs " + units.mass(mass) + ". From a bench or cart " + units.length(FROM)
                + " high to the worktop at " + units.length(lift.height()) + ", hands " + units.length(REACH)
                + " in front of the ankles, one person should lift " + units.mass(limit)
                + " at most: a lifting index of " + String.format(Locale.ROOT, "%.1f", mass / limit) + "."
                + (mass > limit ? " " + who(mass, limit) + locked(loaded) : "");
    }

    private static String who(double mass, double limit) {
        return mass > 2 * limit
                ? "Use a hoist: that is too much even for each of two persons"
                : "Lift it with two persons or a hoist";
    }

    private static String locked(LoadedStand loaded) {
        return loaded.design().support() instanceof Support.Casters ? "; lock the casters first." : ".";
    }
}
