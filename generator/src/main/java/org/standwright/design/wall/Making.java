package org.standwright.design.wall;

import org.standwright.design.kit.Screw;
import org.standwright.geom.Require;
import org.standwright.part.SheetGood;

/**
 * What holders are made of.
 *
 * @param sheet for everything that carries
 * @param thin for bottoms of bins, trays and drawers
 * @param screw that holds their boards and hangers together
 * @param fit how much wider a dado is than the board in it, mm
 */
public record Making(SheetGood sheet, SheetGood thin, Screw screw, double fit) {
    public Making {
        Require.notNegative("fit of a dado", fit, "holders");
    }
}
