package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What keeps a stand from tipping besides its own weight.
 *
 * @param ballast fixed under the middle of the carcass's bottom, kg
 * @param interlock a mechanical lock that lets only one drawer of each bay open at a time
 */
public record Steady(double ballast, boolean interlock, Anchor anchor) {
    /** Its own weight only. */
    public static final Steady BY_ITSELF = new Steady(0, false, Anchor.NONE);

    /** What it is fixed to. */
    public enum Anchor {
        @JsonProperty("none")
        NONE,
        /** The top of the carcass to studs or masonry behind it. */
        @JsonProperty("wall")
        WALL,
        /** Its foot to the floor. */
        @JsonProperty("floor")
        FLOOR
    }

    public Steady with(double otherBallast) {
        return new Steady(otherBallast, interlock, anchor);
    }

    public Steady interlocked() {
        return new Steady(ballast, true, anchor);
    }

    public Steady anchored(Anchor other) {
        return new Steady(ballast, interlock, other);
    }
}
