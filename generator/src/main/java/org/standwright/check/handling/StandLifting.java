package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;

/** Lifting the empty stand from the floor to hand height, by two persons. One on casters is rolled. */
public final class StandLifting implements Rule {
    private static final RuleText TEXT = new RuleText(
            "stand-lifting",
            "Can two persons lift the empty stand?",
            Lift.FORMULA,
            "Two persons, half each. Gripped 300 mm above the floor, lifted to hand height at 750 mm, hands 300 mm in"
                    + " front of the ankles, no turn, a good grip. Without machine and contents, drawers in.",
            Lift.SOURCE);

    /** Common practice, no source. */
    static final Lift BY_HAND = new Lift(300, 300, 450);

    private static final int PERSONS = 2;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        if (stand.design().support() instanceof Support.Casters) {
            return List.of();
        }
        double mass = new EmptyStand(stand).mass();
        return BY_HAND.judged(TEXT, "empty stand", words(stand, mass), mass, PERSONS, stand.units()).stream()
                .toList();
    }

    private static String words(LoadedStand stand, double mass) {
        var units = stand.units();
        int persons = BY_HAND.persons(mass, units);
        return "Empty and without its machine it weighs " + units.mass(mass) + ", with its drawers taken out "
                + units.mass(new EmptyStand(stand).withoutDrawers()) + ". One person should lift "
                + units.mass(BY_HAND.limit(units)) + " from the floor: it takes "
                + (persons <= 1 ? "one person." : persons + " persons, or skids or a dolly under it.");
    }
}
