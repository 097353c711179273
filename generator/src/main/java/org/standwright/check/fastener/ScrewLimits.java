package org.standwright.check.fastener;

import org.standwright.check.Limit;
import org.standwright.geom.Grid;

/**
 * How much of a screw may be asked, N. With the least penetration of the NDS in the wood: its allowable load. With less, which
 * panels seldom leave, the NDS rates nothing: its formula is then where a caution begins, and what the formula has before
 * its safety is the stop.
 */
final class ScrewLimits {
    private ScrewLimits() {}

    /** @param thread within the wood that holds it, mm */
    static Limit withdrawal(NumberedScrew screw, SpecificGravity wood, double thread, LoadDuration duration) {
        var withdrawal = new Withdrawal(screw, wood.value());
        double allowable = withdrawal.perMm() * thread * duration.factor();
        return isRated(screw, thread)
                ? Limit.atMost(allowable)
                : Limit.atMost(allowable, withdrawal.ultimatePerMm() * thread);
    }

    /** @param penetration into the wood that holds it, mm */
    static Limit lateral(NumberedScrew screw, SingleShear joint, double penetration, LoadDuration duration) {
        var modes = new YieldModes(joint);
        double allowable = modes.allowable() * duration.factor();
        return isRated(screw, penetration) ? Limit.atMost(allowable) : Limit.atMost(allowable, modes.yieldLoad());
    }

    static boolean isRated(NumberedScrew screw, double penetration) {
        return !Grid.less(penetration, screw.leastPenetration());
    }
}
