package org.standwright.design.kit;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.OptionalDouble;

/**
 * The surface of a machine that has to come to the working height.
 *
 * @param height above the underside of the machine's base, mm; of a movable table at its usual setting; 0 for the
 *     stand's own worktop
 * @param lowest setting of a movable table, mm above the underside of the base
 * @param highest setting of a movable table, mm above the underside of the base
 */
public record Reference(Kind kind, double height, OptionalDouble lowest, OptionalDouble highest) {
    public Reference {
        if (lowest.orElse(height) > height || highest.orElse(height) < height) {
            throw new IllegalArgumentException("a table from " + lowest.orElse(height) + " to " + highest.orElse(height)
                    + " mm does not reach its usual " + height
                    + " mm. Give its lowest, usual and highest setting in this order.");
        }
    }

    /** A surface that does not move. */
    public static Reference fixed(Kind kind, double height) {
        return new Reference(kind, height, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** How far it can be set lower, mm. */
    public double less() {
        return height - lowest.orElse(height);
    }

    /** How far it can be set higher, mm. */
    public double more() {
        return highest.orElse(height) - height;
    }

    public enum Kind {
        @JsonProperty("table")
        TABLE("machine table above its base"),
        @JsonProperty("movable-table")
        MOVABLE_TABLE("machine table at its usual setting"),
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
