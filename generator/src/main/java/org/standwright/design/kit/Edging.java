package org.standwright.design.kit;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * What covers a panel's edge.
 *
 * @param thickness that it adds to the panel, mm
 */
public record Edging(String name, Kind kind, double thickness) {
    public enum Kind {
        /** Banding tape, ironed or glued on and trimmed. */
        @JsonProperty("tape")
        TAPE,
        /** A strip of solid wood. */
        @JsonProperty("lipping")
        LIPPING
    }
}
