package org.standwright.check;

import java.util.List;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.Stand;
import org.standwright.unit.Units;

/**
 * The heights that suit people of middling size. Elbow heights: medians of ANSUR II (2012, public data), bare feet; shoes
 * add 25 mm (common practice, no source).
 */
final class ElbowHeight implements Rule {
    /** Median elbow height of the men measured, mm. */
    static final double MEN = 1104;
    /** Median elbow height of the women measured, mm. */
    static final double WOMEN = 1022;
    /** mm. */
    static final double SHOES = 25;

    @Override
    public List<Finding> check(Stand stand, Load load) {
        var units = stand.design().unit();
        var height = units.length(stand.stack().workingHeight());
        return List.of(new Finding(
                Severity.NOTE,
                "elbow-height",
                "working height",
                stand.design().workingHeight() instanceof WorkingHeight.Elbow elbow
                        ? height + ", for this elbow and work anything from "
                                + range(elbow.work(), elbow.elbow() + elbow.shoes(), units) + "."
                        : height + ". In shoes, a man of middling size works at " + range(MEN, units) + ", a woman at "
                                + range(WOMEN, units) + ". Your own elbow decides: measure it.",
                "ANSUR II elbow heights; CCOHS and AUVA offsets"));
    }

    private static String range(double elbow, Units units) {
        return range(Work.LIGHT, elbow + SHOES, units) + " for light work, at "
                + range(Work.HEAVY, elbow + SHOES, units) + " for heavy work";
    }

    private static String range(Work work, double elbow, Units units) {
        return units.bareLength(work.lowest(elbow)) + " to " + units.length(work.highest(elbow));
    }
}
