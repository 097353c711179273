package org.standwright.part;

import org.standwright.geom.Require;

/**
 * Two equal strips from one board by one rip with the blade tilted: the mates of a French cleat. Each has a long face
 * and, across the bevel, a short one.
 *
 * <p>2 L - t tan(tilt) + k / cos(tilt) = w, with long face L, board width w, thickness t and kerf k (own derivation,
 * references 7.5); at 45° L = (w + t - k √2) / 2.
 *
 * @param width of the board, mm
 * @param thickness of the board, mm
 * @param kerf of the blade, measured square to it, mm
 * @param tilt of the blade from square, degrees
 */
public record BevelRip(double width, double thickness, double kerf, double tilt) {
    public BevelRip {
        Require.positive("width", width, "bevel rip");
        Require.positive("thickness", thickness, "bevel rip");
        Require.notNegative("kerf", kerf, "bevel rip");
        if (!(tilt > 0 && tilt < 90)) {
            throw new IllegalArgumentException("tilt of a bevel rip is " + tilt + "°, but must lie between 0 and 90.");
        }
    }

    /** Width of a strip's long face, mm. */
    public double longFace() {
        return (width + rise() - kerf / StrictMath.cos(StrictMath.toRadians(tilt))) / 2;
    }

    /** Width of a strip's short face, mm. */
    public double shortFace() {
        return longFace() - rise();
    }

    /** How much longer the long face is: thickness times the tangent of the tilt, mm. */
    public double rise() {
        return thickness * StrictMath.tan(StrictMath.toRadians(tilt));
    }
}
