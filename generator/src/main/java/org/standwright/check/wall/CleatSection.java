package org.standwright.check.wall;

import org.standwright.check.wall.statics.CleatBevel;
import org.standwright.check.wall.statics.Hanging;
import org.standwright.check.wall.statics.StripPull;
import org.standwright.design.wall.Cleat;
import org.standwright.geom.Grid;
import org.standwright.unit.Gravity;

/** The section that strips and hangers share, as statics takes it. */
record CleatSection(Cleat cleat) {
    private static final double FLATTEST = 30;
    private static final double STEEPEST = 45;

    /** Whether the statics is for bevels of this tilt: 30 to 45 degrees. */
    boolean isRated() {
        return !Grid.less(cleat.tilt(), FLATTEST) && !Grid.less(STEEPEST, cleat.tilt());
    }

    CleatBevel bevel() {
        return new CleatBevel(cleat.thickness(), cleat.tilt(), CleatBevel.USUAL_FRICTION);
    }

    /** From the middle of the bevel down to a place so far below the strip's high edge, mm: the tip is blunted. */
    double drop(double below) {
        return below + cleat.blunt() - cleat.rise() / 2;
    }

    /** Of the middle of the bevel over the edge of strip or hanger away from it, mm. */
    double pullHeight() {
        return cleat.face() - cleat.rise() / 2;
    }

    /** Of a strip so long, N. */
    double weight(double length) {
        var material = cleat.sheet().material();
        return Gravity.newtons(length * cleat.height() * cleat.thickness() * 1e-9 * material.density());
    }

    /** A strip's only screw, or a hanger's, with all of a load on it. */
    StripPull pull(Hanging hanging, double screwHeight) {
        return new StripPull(hanging, pullHeight(), screwHeight, 1);
    }

    /** A hanger, its screws in the middle of its short face. */
    StripPull hanger(Hanging hanging, int screws) {
        return StripPull.evenly(hanging, pullHeight(), cleat.shortFace() / 2, screws);
    }
}
