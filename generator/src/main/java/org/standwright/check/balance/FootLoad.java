package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.Weight;
import org.standwright.design.Support;

/**
 * Casters and levelers: of four, three carry everything on an uneven floor, so each must bear a third of the total
 * (rule of several caster makers' guides), kg. Of two kinds of casters the weaker one counts.
 */
public final class FootLoad implements Rule {
    private static final RuleText TEXT = new RuleText(
            "foot-load",
            "Do the casters or levelers bear the load?",
            "each = m / 3",
            "Three of four carry everything on an uneven floor. Drawers and shelves are full.",
            "caster makers' guides: total over three");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        var support = stand.design().support();
        if (support instanceof Support.Casters casters) {
            var weaker = casters.others()
                    .filter(others -> others.rating() < casters.caster().rating())
                    .orElse(casters.caster());
            return List.of(finding("caster", weaker.name(), weaker.rating(), stand));
        }
        if (support instanceof Support.Levelers levelers) {
            return List.of(finding(
                    "leveler", levelers.leveler().name(), levelers.leveler().rating(), stand));
        }
        return List.of();
    }

    private static Finding finding(String kind, String name, double rating, LoadedStand stand) {
        var units = stand.units();
        double each = onOneOfFour(stand.mass());
        return Finding.judged(
                        TEXT,
                        name,
                        new Gauge(Quantity.MASS, each, Limit.atMost(rating)),
                        "Each " + kind + " must bear a third of " + units.mass(stand.mass()) + ", "
                                + units.mass(each) + ": wood and hardware "
                                + units.mass(stand.mass(Weight.Kind.BOARD, Weight.Kind.HARDWARE, Weight.Kind.BALLAST))
                                + ", machine " + units.mass(stand.mass(Weight.Kind.MACHINE)) + ", contents "
                                + units.mass(stand.mass(Weight.Kind.CONTENTS)) + ".")
                .with(new Input("m", "mass of everything, full", Quantity.MASS, stand.mass()));
    }

    /** What one of four supports must bear. */
    static double onOneOfFour(double total) {
        return total / 3;
    }
}
