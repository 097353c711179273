package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** A hole for a hose, a cord or air, right through the worktop with its sub-top, or through the back. */
public sealed interface Cutout {
    /** What goes through: 'dust hose', 'cord', 'air inlet'. */
    String use();

    In in();

    /** Centre from the left edge of the carcass, mm. */
    double x();

    /** Centre from the front edge of the carcass, in the back from its lower edge, mm. */
    double y();

    /** What it goes through. */
    enum In {
        @JsonProperty("worktop")
        WORKTOP,
        @JsonProperty("back")
        BACK
    }

    record Round(String use, In in, double x, double y, double diameter) implements Cutout {}

    /** Its height is the size across {@code width}; {@code radius} rounds its corners; all mm. */
    record Rectangular(String use, In in, double x, double y, double width, double height, double radius)
            implements Cutout {}
}
