package org.standwright.check.fastener;

/** A fastener of a standard size, of which the handbooks give figures. Lengths mm, stresses N/mm². */
public sealed interface Fastener permits NumberedScrew, LagScrew, CommonNail {
    FastenerKind kind();

    /** Nominal: of the shank, or over the thread. */
    double diameter();

    /** What bends and presses: the thread's root, of a smooth nail the shank (NDS 12.3.7.1, as quoted). */
    double root();

    /** Bending yield strength Fyb by the nominal diameter (NDS Table I1, as quoted). */
    double bendingYield();

    /** Length of the tip: 2 D of screws and nails (NDS, as quoted); a lag's is left out of what is counted anyway. */
    default double tip() {
        return kind() == FastenerKind.LAG_SCREW ? 0 : 2 * diameter();
    }

    /** Least length in the wood that holds it, without which it is not rated, mm. */
    default double leastPenetration() {
        return kind().leastPenetration() * diameter();
    }
}
