package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * The surface of a machine that has to come to the working height.
 *
 * @param height above the underside of the machine's base, mm; 0 for the stand's own worktop
 */
public record Reference(Kind kind, double height) {
    public enum Kind {
        @JsonProperty("table")
        TABLE("machine table above its base"),
        @JsonProperty("spindle")
        SPINDLE("spindle above the machine's base"),
        @JsonProperty("worktop")
        WORKTOP("the stand's own worktop");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** The term's name in the height stack. */
        public String words() {
            return words;
        }
    }
}
