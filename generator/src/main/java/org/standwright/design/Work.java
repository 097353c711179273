package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Kinds of work by where their surface should lie against the elbow: CCOHS and AUVA, as quoted. */
public enum Work {
    /** Marking, fine assembly. */
    @JsonProperty("precise")
    PRECISE(50, 100),
    @JsonProperty("light")
    LIGHT(-100, -50),
    /** Pressing down. */
    @JsonProperty("heavy")
    HEAVY(-400, -200);

    private final double lowest;
    private final double highest;

    Work(double lowest, double highest) {
        this.lowest = lowest;
        this.highest = highest;
    }

    /** Lowest surface for an elbow at this height, mm. */
    public double lowest(double elbow) {
        return elbow + lowest;
    }

    /** Highest surface for an elbow at this height, mm. */
    public double highest(double elbow) {
        return elbow + highest;
    }
}
