package org.standwright.check;

import java.util.List;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;

/**
 * Casters and levelers: of four, three carry everything on an uneven floor, so each must bear a third of the total
 * (rule of several caster makers' guides). Of two kinds of casters the weaker one counts.
 */
final class SupportLoad implements Rule {
    private static final String SOURCE = "caster makers' guides: total over three; contents assumed at 0.5 kg/dm\u00b3";

    @Override
    public List<Finding> check(Stand stand, Load load) {
        var support = stand.design().support();
        if (support instanceof Support.Casters casters) {
            var weaker = casters.others()
                    .filter(others -> others.rating() < casters.caster().rating())
                    .orElse(casters.caster());
            return finding("caster", weaker.name(), weaker.rating(), stand.design(), load);
        }
        if (support instanceof Support.Levelers levelers) {
            return finding(
                    "leveler", levelers.leveler().name(), levelers.leveler().rating(), stand.design(), load);
        }
        return List.of();
    }

    private static List<Finding> finding(String kind, String name, double rating, StandDesign design, Load load) {
        var units = design.unit();
        double each = Load.onOneOfFour(load.total());
        var figures = "Each " + kind + " must bear a third of " + units.mass(load.total()) + " (wood "
                + units.mass(load.wood()) + ", machine " + units.mass(load.machine()) + ", contents about "
                + units.mass(load.contents()) + "), " + units.mass(each) + "; it is rated for " + units.mass(rating)
                + ".";
        return each > rating
                ? List.of(new Finding(
                        Severity.STOP,
                        kind + "-load",
                        name,
                        figures + " Use one rated for " + units.mass(StrictMath.ceil(each)) + " or more.",
                        SOURCE))
                : List.of(new Finding(Severity.NOTE, kind + "-load", name, figures, SOURCE));
    }
}
