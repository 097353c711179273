package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;
import org.standwright.unit.Units;

/**
 * Lifting the machine onto the stand by the NIOSH equation: lifting index = mass / RWL, at most 1. From a bench or cart
 * to the top of the worktop, where it is set down with care, so that the height there counts. Bench, reach and grip are
 * common practice, no source.
 */
public final class MachineLifting implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "machine-lifting",
            "Can one person lift the machine onto the stand?",
            Lift.FORMULA,
            "From a bench or cart 750 mm high, one person's hands 400 mm in front of the ankles; two stand at its ends, hands "
                    + "300 mm in front of them, half each; no turn, a rare lift with a good grip.",
            Lift.SOURCE);

    /** mm. */
    private static final double REACH = 400;
    /** Of two persons who stand at its ends, as they lift the stand, mm. */
    private static final double REACH_OF_TWO = StandLifting.BY_HAND.reach();
    /** Bench or cart that the machine is lifted from, mm. */
    private static final double FROM = 750;

    /** What is printed as more than 1, with two decimals. */
    private static final double PRINTED_ABOVE_ONE = 1.005;

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
        return lift.limit(loaded.units()) == 0
                ? List.of(Finding.caution(
                        TEXT,
                        name,
                        "Nobody should lift anything to the worktop at "
                                + loaded.units().length(worktop) + ", above the reach of the lifting equation. Use a "
                                + "hoist" + locked(loaded)))
                : lift.judged(TEXT, name, words(loaded, lift), mass, 1, loaded.units()).stream()
                        .toList();
    }

    private static String words(LoadedStand loaded, Lift lift) {
        var units = loaded.units();
        double mass = loaded.design().machine().mass();
        double limit = lift.limit(units);
        return "It weighs " + units.mass(mass) + ". From a bench or cart " + units.length(FROM)
                + " high to the worktop at " + units.length(lift.height()) + ", hands " + units.length(REACH)
                + " in front of the ankles, one person should lift " + units.mass(limit)
                + " at most: a lifting index of " + Quantity.RATIO.words(mass / limit, units) + "."
                + (mass > limit ? " " + byTwo(lift, mass, units) + locked(loaded) : "");
    }

    /** Two lift it where the index, as precise as it is printed, is not above 1. */
    private static String byTwo(Lift byOne, double mass, Units units) {
        double limit = new Lift(REACH_OF_TWO, byOne.height(), byOne.travel()).limit(units);
        double index = mass / 2 / limit;
        return "Two at its ends should lift " + units.mass(2 * limit) + ", an index of "
                + Quantity.RATIO.words(index, units) + " for each: "
                + (index < PRINTED_ABOVE_ONE ? "lift it with two persons or a hoist" : "use a hoist");
    }

    private static String locked(LoadedStand loaded) {
        return loaded.design().support() instanceof Support.Casters ? "; lock the casters first." : ".";
    }
}
