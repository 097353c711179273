package org.standwright.drawing.wall;

import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** A height above or below the level line, in words. */
public final class SignedHeight {
    private SignedHeight() {}

    /**
     * '+240', '−60', '±0', as bare lengths.
     *
     * @param above the level line, mm
     */
    public static String of(double above, Units units) {
        double shown = units.shown(above);
        if (Grid.same(shown, 0)) {
            return "±0";
        }
        return (shown > 0 ? "+" : "−") + units.bareLength(Math.abs(shown));
    }
}
