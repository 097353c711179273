package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** How a front meets the carcass. */
public enum Mount {
    @JsonProperty("overlay")
    OVERLAY,
    @JsonProperty("inset")
    INSET
}
