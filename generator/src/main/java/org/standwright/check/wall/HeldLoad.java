package org.standwright.check.wall;

import org.standwright.design.wall.built.HungHolder;

/**
 * What hangs on a wall with one holder.
 *
 * @param wood mass of its boards, kg
 * @param things mass of what it holds, kg
 * @param out how far the centre of mass of both lies in front of the wall's surface, mm
 * @param along where that centre is along the wall, from the wall's left end, mm
 */
public record HeldLoad(HungHolder holder, double wood, double things, double out, double along) {
    /** kg. */
    public double mass() {
        return wood + things;
    }
}
