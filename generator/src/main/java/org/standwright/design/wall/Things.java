package org.standwright.design.wall;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.standwright.geom.Require;

/**
 * What a holder holds: so many alike, each of this size and mass as it lies or hangs there.
 *
 * @param width along the wall, mm
 * @param depth away from the wall, mm
 * @param height upwards, mm
 * @param mass of each, kg
 * @param flammable whether it burns easily, such as solvents, oily rags, or has a charger
 */
public record Things(int count, double width, double depth, double height, double mass, Use use, boolean flammable) {
    /** How often a hand goes there. */
    public enum Use {
        @JsonProperty("daily")
        DAILY,
        @JsonProperty("weekly")
        WEEKLY,
        @JsonProperty("monthly")
        MONTHLY,
        @JsonProperty("yearly")
        YEARLY,
        /** Not for a year: it loses its place. */
        @JsonProperty("unused")
        UNUSED
    }

    public Things {
        if (count < 1) {
            throw new IllegalArgumentException(
                    "things to hold are " + count + "; a holder that holds nothing is no use, leave it out.");
        }
        Require.positive("width", width, "things");
        Require.positive("depth", depth, "things");
        Require.positive("height", height, "things");
        if (!(mass >= 0)) {
            throw new IllegalArgumentException("mass of a thing is " + mass + " kg, but must be 0 or more.");
        }
    }

    /** Of all of them, kg. */
    public double wholeMass() {
        return count * mass;
    }
}
