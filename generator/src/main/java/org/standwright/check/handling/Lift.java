package org.standwright.check.handling;

import java.util.Optional;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.Quantity;
import org.standwright.check.RuleText;
import org.standwright.unit.Units;

/**
 * How something is lifted, without a turn of the trunk.
 *
 * @param reach of the hands from the middle between the ankles, mm
 * @param height of the hands above the floor where it counts, mm
 * @param travel of the hands up or down, mm
 */
public record Lift(double reach, double height, double travel) {
    public static final String FORMULA = "LI = m / (n RWL), RWL = LC HM VM DM; in cm and kg LC = 23, HM = 25 / H, "
            + "VM = 1 - 0.003 |V - 75|, DM = 0.82 + 4.5 / D; in inches and lb LC = 51, HM = 10 / H, "
            + "VM = 1 - 0.0075 |V - 30|, DM = 0.82 + 1.8 / D";
    public static final String SOURCE = "NIOSH lifting equation, Pub. 94-110";

    /** What one person should lift so at most, kg; 0 out of reach. */
    public double limit(Units units) {
        return LiftingEquation.of(units).limitInKilograms(reach, height, travel);
    }

    /** A judged lifting index for each of so many persons, or nothing out of reach. */
    Optional<Finding> judged(RuleText text, String subject, String message, double mass, int persons, Units units) {
        double limit = limit(units);
        return limit == 0
                ? Optional.empty()
                : Optional.of(Finding.judged(
                                text,
                                subject,
                                new Gauge(Quantity.RATIO, mass / persons / limit, Limit.cautionAbove(1)),
                                message)
                        .with(
                                new Input("m", "mass", Quantity.MASS, mass),
                                new Input("n", "persons", Quantity.COUNT, persons),
                                new Input("H", "hands in front of the ankles", Quantity.LENGTH, reach),
                                new Input("V", "hands above the floor", Quantity.LENGTH, height),
                                new Input("D", "travel of the hands", Quantity.LENGTH, travel),
                                new Input("RWL", "what one person should lift", Quantity.MASS, limit)));
    }

    /** How many persons it takes for a mass, kg. */
    int persons(double mass, Units units) {
        return (int) Math.ceil(mass / limit(units) - 1e-9);
    }
}
