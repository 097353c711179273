package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** Boards heavier than the load constant of the lifting equation are for two people even in the best posture. */
public final class SheetLifting implements Rule {
    private static final RuleText TEXT = new RuleText(
            "sheet-lifting",
            "Can one person lift a whole sheet?",
            "m = l w t d, at most the equation's load constant",
            "The best posture: hands close to the body at knuckle height. A sheet is never lifted like that.",
            Lift.SOURCE);

    private static final Limit LOAD_CONSTANT = Limit.cautionAbove(LiftingEquation.METRIC.most());

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return loaded.design().sheets().stream()
                .map(sheet -> finding(sheet, loaded.units()))
                .toList();
    }

    private static Finding finding(SheetGood sheet, Units units) {
        var gauge = new Gauge(Quantity.MASS, sheet.mass(), LOAD_CONSTANT);
        var who = gauge.used() > 1 ? ": two people, or have it broken down where you buy it." : ".";
        return Finding.judged(
                        TEXT, sheet.material().name(), gauge, "A whole sheet weighs " + units.mass(sheet.mass()) + who)
                .with(
                        new Input("l", "length", Quantity.LENGTH, sheet.length()),
                        new Input("w", "width", Quantity.LENGTH, sheet.width()),
                        new Input(
                                "t",
                                "thickness",
                                Quantity.LENGTH,
                                sheet.material().thickness()),
                        new Input(
                                "d",
                                "density",
                                Quantity.DENSITY,
                                sheet.material().density()));
    }
}
