package org.standwright.advice;

import java.util.OptionalDouble;
import org.standwright.design.StandDesign;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.SheetGood;

/**
 * Parts of one sheet that may lie across its grain.
 *
 * @param sheet its name
 */
record FreedGrain(String sheet) implements Change {
    @Override
    public StandDesign in(StandDesign design) {
        return Redesign.of(design, now -> now.material().name().equals(sheet) ? freed(now) : now);
    }

    private static SheetGood freed(SheetGood now) {
        var material = now.material();
        return new SheetGood(
                new Material(
                        material.name(),
                        material.thickness(),
                        material.density(),
                        Grain.NONE,
                        OptionalDouble.empty(),
                        material.colour()),
                now.length(),
                now.width(),
                now.nominal(),
                now.price());
    }

    @Override
    public double size() {
        return LOOKS;
    }

    @Override
    public String words(StandDesign before) {
        return "parts of " + sheet + " in either direction: its grain none";
    }
}
