package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;

/** Lifting the empty stand from the floor to hand height, by two persons. One on casters is rolled. */
public final class StandLifting implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "stand-lifting",
            "Can two persons lift the empty stand?",
            Lift.FORMULA,
            "Two persons, half each. Gripped 300 mm above the floor, lifted to hand height at 750 mm, hands 300 mm in"
                    + " front of the ankles, no turn, a good grip. Without machine and contents, drawers taken out.",
            Lift.SOURCE);

    /** Common practice, no source. */
    static final Lift BY_HAND = new Lift(300, 300, 450);

    private static final int PERSONS = 2;
    /** As many as find room around it; common practice, no source. */
    private static final int MOST_PERSONS = 4;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        if (stand.design().support() instanceof Support.Casters) {
            return List.of();
        }
        double mass = new EmptyStand(stand).withoutDrawers();
        return BY_HAND.judged(TEXT, "empty stand", words(stand, mass), mass, PERSONS, stand.units()).stream()
                .toList();
    }

    private static String words(LoadedStand stand, double mass) {
        var units = stand.units();
        return "Empty and without its machine it weighs " + units.mass(new EmptyStand(stand).mass())
                + ", with its drawers taken out " + units.mass(mass) + ". One person should lift "
                + units.mass(BY_HAND.limit(units)) + " from the floor: " + who(BY_HAND.persons(mass, units));
    }

    private static String who(int persons) {
        if (persons > MOST_PERSONS) {
            return "use skids, a dolly or a hoist, drawers and worktop off.";
        }
        return persons <= 1
                ? "it takes one person."
                : "it takes " + persons + " persons, drawers out"
                        + (persons > PERSONS ? ", or skids or a dolly under it." : ".");
    }
}
