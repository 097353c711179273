package org.standwright.check.handling;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
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

/** Sheets heavier than the load constant of the lifting equation are for two people even in the best posture. */
public final class SheetLifting implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "sheet-lifting",
            "Can one person lift a whole sheet?",
            "m = l w t d, at most the equation's load constant, 23 kg, in inches and pounds 51 lb",
            "The best posture: hands close to the body at knuckle height. A sheet is never lifted like that.",
            Lift.SOURCE);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var heaviestFirst = loaded.design().sheets().stream()
                .sorted(Comparator.comparingDouble(SheetGood::mass).reversed())
                .toList();
        return heaviestFirst.isEmpty() ? List.of() : List.of(found(heaviestFirst, loaded.units()));
    }

    private static Finding found(List<SheetGood> heaviestFirst, Units units) {
        var heaviest = heaviestFirst.get(0);
        var limit = Limit.noteAbove(LiftingEquation.of(units).most());
        return Finding.judged(
                        TEXT,
                        heaviest.material().name(),
                        new Gauge(Quantity.MASS, heaviest.mass(), limit),
                        words(heaviestFirst, limit, units))
                .with(
                        new Input("l", "length", Quantity.LENGTH, heaviest.length()),
                        new Input("w", "width", Quantity.LENGTH, heaviest.width()),
                        new Input(
                                "t",
                                "thickness",
                                Quantity.LENGTH,
                                heaviest.material().thickness()),
                        new Input(
                                "d",
                                "density",
                                Quantity.DENSITY,
                                heaviest.material().density()));
    }

    private static String words(List<SheetGood> heaviestFirst, Limit limit, Units units) {
        var heaviest = "A whole sheet weighs " + units.mass(heaviestFirst.get(0).mass());
        if (heaviestFirst.get(0).mass() <= limit.first()) {
            return heaviest + ".";
        }
        var others = heaviestFirst.stream()
                .skip(1)
                .filter(sheet -> sheet.mass() > limit.first())
                .map(sheet -> ", one of " + sheet.material().name() + " " + units.mass(sheet.mass()))
                .collect(Collectors.joining());
        return heaviest + others + ": two people, or have it broken down where you buy it.";
    }
}
