package org.standwright.design.kit;

import com.fasterxml.jackson.annotation.JsonProperty;

/** The four sides of a machine or a stand, seen from above, counter-clockwise from the front. */
public enum Side {
    @JsonProperty("front")
    FRONT,
    @JsonProperty("right")
    RIGHT,
    @JsonProperty("back")
    BACK,
    @JsonProperty("left")
    LEFT;

    /** Where this side comes to lie when its owner is turned counter-clockwise, seen from above, by {@code degrees}. */
    public Side turned(int degrees) {
        return values()[Math.floorMod(ordinal() + degrees / 90, 4)];
    }
}
