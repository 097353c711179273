package org.standwright.check.fastener;

import org.standwright.check.Limit;
import org.standwright.geom.Grid;

/**
 * How much of a screw may be asked, N. A caution begins at its allowable load, and the stop is what the formula has before
 * its safety: how dense the wood really is nobody knows. With less than the least penetration, which panels seldom leave,
 * the NDS rates nothing, and its formulas are used all the same.
 */
final class ScrewLimits {
    private ScrewLimits() {}

    /** @param thread within the wood that holds it, mm */
    static Limit withdrawal(NumberedScrew screw, SpecificGravity wood, double thread, LoadDuration duration) {
        var withdrawal = new Withdrawal(screw, wood.value());
        return Limit.atMost(withdrawal.perMm() * thread * duration.factor(), withdrawal.ultimatePerMm() * thread);
    }

    static Limit lateral(SingleShear joint, LoadDuration duration) {
        var modes = new YieldModes(joint);
        return Limit.atMost(modes.allowable() * duration.factor(), modes.yieldLoad());
    }

    /** The same where a rating of somebody else's stands behind it: no more than a note. */
    static Limit noted(SingleShear joint, LoadDuration duration) {
        return Limit.noteAbove(new YieldModes(joint).allowable() * duration.factor());
    }

    /** @param penetration into the wood that holds it, mm */
    static boolean isRated(NumberedScrew screw, double penetration) {
        return !Grid.less(penetration, screw.leastPenetration());
    }
}
