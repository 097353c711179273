package org.standwright.check.bending;

import org.standwright.geom.Require;

/**
 * How a board's deflection grows under a load that stays: EN 1995-1-1, final = instant (1 + kdef) on the sustained share
 * of the load, with kdef of table 3.2 for a heated room (service class 1), as quoted.
 *
 * @param kdef of the board
 */
public record Creep(double kdef) {
    public Creep {
        Require.notNegative("kdef", kdef, "creep");
    }

    /** Factor on the deflection under what stays. */
    public double factor() {
        return 1 + kdef;
    }

    /** Deflection after years, mm. */
    public double longTerm(double instant) {
        return instant * factor();
    }
}
