package org.standwright.advice;

import org.standwright.design.StandDesign;
import org.standwright.part.SheetGood;

/**
 * Another board bought in the place of one, wherever that is used.
 *
 * @param instead name of the one in use
 */
record SheetSwap(String instead, SheetGood sheet) implements Change {
    @Override
    public StandDesign in(StandDesign design) {
        return OtherSheets.of(design, now -> now.material().name().equals(instead) ? sheet : now);
    }

    @Override
    public double size() {
        return 0;
    }

    @Override
    public String words(StandDesign before) {
        var units = before.unit();
        return sheet.material().name() + " (" + units.bareLength(sheet.length()) + " x " + units.length(sheet.width())
                + ") instead of " + instead;
    }
}
