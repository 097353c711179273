package org.standwright.check.fastener;

import org.standwright.geom.Require;

/**
 * A fastener pushed sideways and drawn out at once.
 *
 * <p>With α the angle of the load R from the wood's surface, wood screws and lags carry Z'α = W' Z' / (W' cos² α + Z'
 * sin² α), nails the same with cos α and sin α (NDS 2018 12.4, as quoted); R may be as much as Z'α.
 *
 * @param lateral what it may carry sideways alone, Z', N
 * @param withdrawal what it may carry straight out alone, W', N
 */
public record CombinedLoad(double lateral, double withdrawal) {
    public CombinedLoad {
        Require.positive("lateral capacity", lateral, "combined load");
        Require.positive("withdrawal capacity", withdrawal, "combined load");
    }

    /** Share used, R / Z'α; 1 at the limit. */
    public double used(FastenerKind kind, double sideways, double out) {
        if (kind == FastenerKind.NAIL) {
            return linear(sideways, out);
        }
        double load = StrictMath.hypot(sideways, out);
        return load == 0 ? 0 : (sideways / lateral * sideways + out / withdrawal * out) / load;
    }

    /** The simple screen V/Z' + T/W': equal to the rule for nails, and never below that for screws. */
    public double linear(double sideways, double out) {
        return sideways / lateral + out / withdrawal;
    }
}
