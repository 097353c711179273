package org.standwright.check.wall.statics;

import org.standwright.geom.Grid;

/**
 * The bevel on which a hanger sits: both strips of one thickness, sawn with the blade tilted from square, the wall
 * strip's high edge away from the wall.
 *
 * <p>Seen from the side, with x out of the wall and z up, the wall strip's bevel climbs from the wall to its high edge
 * along (cos θ, sin θ), θ above the level. What it does to the hanger without friction is square to that: N (−sin θ, cos θ),
 * up and towards the wall. N cos θ = W carries the weight; so N sin θ = W tan θ draws the hanger to the wall and, as its
 * counterpart, the strip from it. At 45° that is W itself; the flatter the bevel the less, and a level ledge draws nothing.
 *
 * <p>With friction μ = tan φ the bevel's force may lean by φ to either side of its square, so between tan(θ − φ) and tan(θ
 * + φ) of the weight can act level; beyond the latter the hanger rides up the bevel and out (own derivation).
 *
 * @param thickness t of strip and hanger, mm
 * @param tilt θ of the saw from square, degrees
 * @param friction μ of wood on wood, without a unit
 */
public record CleatBevel(double thickness, double tilt, double friction) {
    /** Common practice. */
    public static final double USUAL_TILT = 45;
    /** For wood on wood; no source. */
    public static final double USUAL_FRICTION = 0.3;

    private static final double FLATTEST = 30;
    private static final double STEEPEST = 45;

    public CleatBevel {
        Given.positive("thickness of the strip", thickness, "mm");
        if (Double.isNaN(tilt) || Grid.less(tilt, FLATTEST) || Grid.less(STEEPEST, tilt)) {
            throw Given.refused("tilt of the bevel", tilt, "°", "must lie in 30 to 45; 45 is usual");
        }
        if (!(friction >= 0 && friction < 1)) {
            throw Given.refused("friction", friction, "", "must be 0 or more and below 1; 0.3 is usual");
        }
    }

    /** At the usual tilt, with the usual friction. */
    public static CleatBevel usual(double thickness) {
        return new CleatBevel(thickness, USUAL_TILT, USUAL_FRICTION);
    }

    /** How much higher its high edge is: t tan θ, mm. */
    public double rise() {
        return thickness * wedge();
    }

    /** Where what hangs on it acts, in front of the wall: t/2, mm. */
    public double middle() {
        return thickness / 2;
    }

    /** Pull outwards on the strip for each N that hangs on it, without friction: tan θ. */
    public double wedge() {
        return StrictMath.tan(StrictMath.toRadians(tilt));
    }

    /** The same at which the hanger rides up and out: tan(θ + φ) = (tan θ + μ) / (1 − μ tan θ). */
    public double rideOut() {
        return (wedge() + friction) / (1 - friction * wedge());
    }
}
