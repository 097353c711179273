package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** Boards heavier than the load constant of the lifting equation are for two people even in the best posture. */
public final class SheetLifting implements Rule {
    private static final RuleText TEXT = RuleText.plain(
            "sheet-lifting", "Can one person lift a whole sheet?", "NIOSH lifting equation, Pub. 94-110");

    private static final double LOAD_CONSTANT = LiftingEquation.METRIC.most();

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var units = stand.design().unit();
        return stand.design().sheets().stream()
                .filter(sheet -> sheet.mass() > LOAD_CONSTANT)
                .map(sheet -> Finding.caution(
                        TEXT,
                        sheet.material().name(),
                        "A whole sheet weighs " + units.mass(sheet.mass()) + ", more than " + units.mass(LOAD_CONSTANT)
                                + ": two people, or have it broken down where you buy it."))
                .toList();
    }
}
