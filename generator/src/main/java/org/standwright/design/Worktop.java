package org.standwright.design;

import java.util.Optional;
import org.standwright.part.SheetGood;

/**
 * What lies on the sub-top.
 *
 * @param layers 1 or 2; two are glued and screwed
 * @param plate opening for a plate that is let in flush
 */
public record Worktop(SheetGood sheet, int layers, Overhang overhang, Optional<PlateOpening> plate) {
    /** How far the worktop reaches over the carcass on each side, mm. */
    public record Overhang(double front, double back, double left, double right) {}
}
