package org.standwright.part;

import java.util.Locale;
import org.standwright.geom.Require;

/** What widens a hole at the face that it is bored from, so that a head or a washer sinks in. */
public sealed interface Recess {
    /** Its width at the face, mm. */
    double diameter();

    /**
     * How deep it reaches below the face, mm.
     *
     * @param bore diameter of the hole that it widens, mm
     */
    double depth(double bore);

    /**
     * A cone for a countersunk head.
     *
     * @param angle between opposite sides of the cone, degrees: 90 for metric screws, 82 for inch ones (common
     *     practice, no source)
     */
    record Countersink(double diameter, double angle) implements Recess {
        public Countersink {
            Require.positive("diameter", diameter, "countersink");
            if (!(angle > 0 && angle < 180)) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT, "angle of a countersink is %s°, but must lie between 0 and 180.", angle));
            }
        }

        @Override
        public double depth(double bore) {
            return (diameter - bore) / 2 / StrictMath.tan(StrictMath.toRadians(angle / 2));
        }
    }

    /** A wider cylinder with a flat floor, for a washer or a hexagon head. */
    record Counterbore(double diameter, double depth) implements Recess {
        public Counterbore {
            Require.positive("diameter", diameter, "counterbore");
            Require.positive("depth", depth, "counterbore");
        }

        @Override
        public double depth(double bore) {
            return depth;
        }
    }
}
