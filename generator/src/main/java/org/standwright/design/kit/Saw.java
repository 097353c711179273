package org.standwright.design.kit;

import org.standwright.geom.Require;

/**
 * The saw that cuts the sheets.
 *
 * @param kerf width of its cut, mm
 * @param trim cut off each edge of a new sheet, blade included, mm
 */
public record Saw(double kerf, double trim) {
    public Saw {
        Require.notNegative("kerf", kerf, "saw");
        Require.notNegative("trim", trim, "saw");
    }
}
