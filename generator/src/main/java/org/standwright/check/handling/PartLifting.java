package org.standwright.check.handling;

import java.util.Comparator;
import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Weight;

/** The heaviest board by itself against the NIOSH equation, as it is handled at a bench. */
public final class PartLifting implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "part-lifting",
            "Can one person lift the heaviest part?",
            Lift.FORMULA,
            "At a bench 750 mm high, lifted by 250 mm, hands 400 mm in front of the ankles, no turn, a good grip.",
            Lift.SOURCE);

    /** Common practice, no source. */
    private static final Lift AT_THE_BENCH = new Lift(400, 750, 250);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.weights().stream()
                .filter(weight -> weight.kind() == Weight.Kind.BOARD)
                .max(Comparator.comparingDouble(Weight::mass))
                .flatMap(heaviest -> AT_THE_BENCH.judged(
                        TEXT, heaviest.what(), words(heaviest, stand), heaviest.mass(), 1, stand.units()))
                .stream()
                .toList();
    }

    private static String words(Weight heaviest, LoadedStand stand) {
        var units = stand.units();
        return "The heaviest part, " + units.mass(heaviest.mass()) + "; at a bench one person should lift "
                + units.mass(AT_THE_BENCH.limit(units)) + ".";
    }
}
