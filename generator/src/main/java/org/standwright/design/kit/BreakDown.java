package org.standwright.design.kit;

import org.standwright.geom.Require;

/**
 * A hand-held saw, guided by a track or a straight edge, that divides what is too large for the other saw.
 *
 * @param kerf width of its cut, mm
 * @param allowance left on both sides of its cut and cut off again by the other saw, mm
 */
public record BreakDown(double kerf, double allowance) {
    public BreakDown {
        Require.notNegative("kerf", kerf, "break-down saw");
        Require.notNegative("allowance", allowance, "break-down saw");
    }
}
