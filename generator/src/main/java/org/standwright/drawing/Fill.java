package org.standwright.drawing;

import java.util.OptionalDouble;

/** What covers an area: white hides what lies under it. */
public enum Fill {
    NONE(OptionalDouble.empty()),
    WHITE(OptionalDouble.of(1)),
    PALE(OptionalDouble.of(0.94)),
    LIGHT(OptionalDouble.of(0.86)),
    GRAY(OptionalDouble.of(0.7));

    private final OptionalDouble brightness;

    Fill(OptionalDouble brightness) {
        this.brightness = brightness;
    }

    /** From 0 for black to 1 for white; empty when nothing is covered. */
    public OptionalDouble brightness() {
        return brightness;
    }
}
