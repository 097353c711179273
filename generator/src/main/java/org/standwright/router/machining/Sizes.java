package org.standwright.router.machining;

import org.standwright.unit.Units;

/** Lengths that are set or drilled by hand: millimetres, with the design's inches beside them where it has such. */
public record Sizes(Units units) {
    /** '6.35 mm', '6.35 mm (1/4 in)'. */
    public String of(double mm) {
        return with(mm, units);
    }

    /** Of a drill or a bit: to 1/64 in, as they come. */
    public String bore(double mm) {
        return with(mm, units == Units.MM ? Units.MM : Units.INCH_64);
    }

    private static String with(double mm, Units beside) {
        boolean isShown = beside != Units.MM && beside.shown(mm) > 0;
        return Mm.of(mm) + " mm" + (isShown ? " (" + beside.length(mm) + ")" : "");
    }
}
