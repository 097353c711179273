package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** On which side a door has its hinges. */
public enum Hung {
    @JsonProperty("left")
    LEFT,
    @JsonProperty("right")
    RIGHT,
    /** Two doors that meet in the middle. */
    @JsonProperty("pair")
    PAIR
}
