package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/** Shelves in one opening, evenly spaced. */
public record Shelves(Kind kind, int count) {
    public enum Kind {
        /** Housed in the uprights. */
        @JsonProperty("fixed")
        FIXED,
        /** On pins in rows of holes 32 mm apart. */
        @JsonProperty("adjustable")
        ADJUSTABLE
    }
}
