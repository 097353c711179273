package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Whether the stand is built as it is written, or left and right changed over; the machine itself never is. */
public enum Layout {
    @JsonProperty("as-written")
    AS_WRITTEN,
    @JsonProperty("mirrored")
    MIRRORED
}
