package org.standwright.check;

import java.util.List;
import org.standwright.design.built.Stand;

/** Boards heavier than the load constant of the lifting equation are for two people even in the best posture. */
final class SheetLifting implements Rule {
    private static final double LOAD_CONSTANT = LiftingEquation.METRIC.most();

    @Override
    public List<Finding> check(Stand stand, Load load) {
        var units = stand.design().unit();
        return stand.design().sheets().stream()
                .filter(sheet -> sheet.mass() > LOAD_CONSTANT)
                .map(sheet -> new Finding(
                        Severity.CAUTION,
                        "sheet-lifting",
                        sheet.material().name(),
                        "A whole sheet weighs " + units.mass(sheet.mass()) + ", more than " + units.mass(LOAD_CONSTANT)
                                + ": two people, or have it broken down where you buy it.",
                        "NIOSH lifting equation, Pub. 94-110"))
                .toList();
    }
}
