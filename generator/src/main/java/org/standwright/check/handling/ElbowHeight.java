package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.unit.Units;

/**
 * The heights that suit people of middling size. Elbow heights: medians of ANSUR II (2012, public data), bare feet; shoes
 * add 25 mm (common practice, no source).
 */
public final class ElbowHeight implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "elbow-height",
            "Does the working height suit the person?",
            "height = elbow + shoes + offset for the work",
            "People of middling size in shoes of 25 mm; light work 50 to 100 mm below the elbow, heavy 200 to 400 mm.",
            "ANSUR II elbow heights; CCOHS and AUVA offsets");

    /** Median elbow height of the men measured, mm. */
    static final double MEN = 1104;
    /** Median elbow height of the women measured, mm. */
    static final double WOMEN = 1022;
    /** mm. */
    static final double SHOES = 25;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var units = stand.design().unit();
        var height = units.length(stand.stack().workingHeight());
        return List.of(Finding.note(
                TEXT,
                "working height",
                stand.design().workingHeight() instanceof WorkingHeight.Elbow elbow
                        ? height + ", for this elbow and work anything from "
                                + range(elbow.work(), elbow.elbow() + elbow.shoes(), units) + "."
                        : height + ". In shoes, a man of middling size works at " + range(MEN, units) + ", a woman at "
                                + range(WOMEN, units) + ". Your own elbow decides: measure it."));
    }

    private static String range(double elbow, Units units) {
        return range(Work.LIGHT, elbow + SHOES, units) + " for light work, at "
                + range(Work.HEAVY, elbow + SHOES, units) + " for heavy work";
    }

    private static String range(Work work, double elbow, Units units) {
        return units.bareLength(work.lowest(elbow)) + " to " + units.length(work.highest(elbow));
    }
}
