package org.standwright.design.kit;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/** Which way boards pass through a machine, seen by a person in front of it. */
public enum Feed {
    @JsonProperty("none")
    NONE,
    @JsonProperty("front-to-back")
    FRONT_TO_BACK,
    @JsonProperty("back-to-front")
    BACK_TO_FRONT,
    @JsonProperty("left-to-right")
    LEFT_TO_RIGHT,
    @JsonProperty("right-to-left")
    RIGHT_TO_LEFT;

    /** The machine's side at which a board goes in; nothing for a machine that boards do not pass through. */
    public Optional<Side> infeed() {
        return switch (this) {
            case NONE -> Optional.empty();
            case FRONT_TO_BACK -> Optional.of(Side.FRONT);
            case BACK_TO_FRONT -> Optional.of(Side.BACK);
            case LEFT_TO_RIGHT -> Optional.of(Side.LEFT);
            case RIGHT_TO_LEFT -> Optional.of(Side.RIGHT);
        };
    }
}
