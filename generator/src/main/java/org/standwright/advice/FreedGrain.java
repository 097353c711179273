package org.standwright.advice;

import org.standwright.design.StandDesign;
import org.standwright.part.Grain;
import org.standwright.part.SheetGood;

/**
 * Parts of one sheet that may lie across its grain.
 *
 * @param sheet its name
 */
record FreedGrain(String sheet) implements Change {
    @Override
    public StandDesign in(StandDesign design) {
        return OtherSheets.of(design, now -> now.material().name().equals(sheet) ? freed(now) : now);
    }

    private static SheetGood freed(SheetGood now) {
        return now.of(now.material().grained(Grain.NONE));
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
