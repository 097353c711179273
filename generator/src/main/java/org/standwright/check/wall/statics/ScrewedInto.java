package org.standwright.check.wall.statics;

import org.standwright.geom.Grid;

/**
 * The wood that holds a screw.
 *
 * @param gravity its specific gravity
 * @param penetration of the screw into it, with the tip, of a lag without, mm
 * @param thread of that, threaded, mm
 * @param whenShort what counts of it below the least penetration
 */
public record ScrewedInto(double gravity, double penetration, double thread, Short whenShort) {
    /** What counts of a screw with less than the least penetration in the wood, which the NDS does not rate. */
    public enum Short {
        /** Nothing: for a stud. */
        HOLDS_NOTHING,
        /** The formulas as they are, for a panel, which is seldom thick enough: to be told with every result. */
        COUNTS_AS_IT_IS
    }

    public ScrewedInto {
        Given.gravity("the wood that holds the screw", gravity);
        Given.notNegative("penetration of the screw", penetration, "mm");
        Given.notNegative("thread in the wood", thread, "mm");
        if (Grid.less(penetration, thread)) {
            throw Given.refused(
                    "thread in the wood", thread, "mm", "must be no more than the penetration, " + penetration + " mm");
        }
    }
}
