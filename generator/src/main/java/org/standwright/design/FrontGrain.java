package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How the grain of a drawer's front runs; that of a door always stands upright. */
public enum FrontGrain {
    @JsonProperty("level")
    LEVEL,
    @JsonProperty("upright")
    UPRIGHT
}
