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
 * (rule of several caster makers' guides), or more where the load is not over their middle (statics), kg. Of two kinds
 * of casters the weaker one counts.
 */
public final class FootLoad implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "foot-load",
            "Do the casters or levelers bear the load?",
            "each = m / 3, or m (1/2 + ex / a) (1/2 + ey / b) where that is more",
            "Three of four carry everything on an uneven floor; or a rigid stand stands on all four, its drawers closed "
                    + "or, where it does not tip then, open as many as may be. Drawers and shelves are full; what stands in bays that are left "
                    + "clear weighs nothing here. Casters bear under the middle of their plates.",
            "caster makers' guides: total over three; statics");

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
        var worst = FootShare.worst(stand);
        double third = stand.mass() / 3;
        double statics = stand.mass() * worst.share();
        return Finding.judged(
                        TEXT,
                        name,
                        new Gauge(Quantity.MASS, Math.max(third, statics), Limit.atMost(rating)),
                        (third >= statics ? aThird(kind, third, stand) : byStatics(kind, statics, worst, stand)) + ": "
                                + masses(stand) + ".")
                .with(
                        new Input("m", "mass of everything, full", Quantity.MASS, stand.mass()),
                        new Input("ex", "centre of mass left or right of their middle", Quantity.LENGTH, worst.aside()),
                        new Input("ey", "centre of mass before or behind it", Quantity.LENGTH, worst.ahead()),
                        new Input(
                                "a",
                                "from left to right",
                                Quantity.LENGTH,
                                worst.feet().a()),
                        new Input(
                                "b",
                                "from front to back",
                                Quantity.LENGTH,
                                worst.feet().b()));
    }

    private static String aThird(String kind, double each, LoadedStand stand) {
        var units = stand.units();
        return "Each " + kind + " must bear a third of " + units.mass(stand.mass()) + ", " + units.mass(each);
    }

    private static String byStatics(String kind, double most, FootShare worst, LoadedStand stand) {
        var units = stand.units();
        return "By statics one " + kind + " bears " + units.mass(most) + " of " + units.mass(stand.mass()) + " with "
                + worst.drawers() + ", more than a third, as the centre of mass is "
                + units.length(worst.aside()) + " aside and " + units.length(worst.ahead())
                + " before or behind the middle of the four";
    }

    private static String masses(LoadedStand stand) {
        var units = stand.units();
        return "wood and hardware "
                + units.mass(stand.mass(Weight.Kind.BOARD, Weight.Kind.HARDWARE, Weight.Kind.BALLAST)) + ", machine "
                + units.mass(stand.mass(Weight.Kind.MACHINE)) + ", contents "
                + units.mass(stand.mass(Weight.Kind.CONTENTS));
    }
}
