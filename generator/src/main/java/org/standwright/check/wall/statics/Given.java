package org.standwright.check.wall.statics;

import java.util.Locale;
import org.standwright.geom.Grid;

/** Checks of numbers handed in, whose messages name the thing, its value and the rule. */
final class Given {
    private Given() {}

    static double positive(String what, double value, String unit) {
        if (!(value > Grid.STEP) || Double.isInfinite(value)) {
            throw refused(what, value, unit, "must be more than 0");
        }
        return value;
    }

    static double notNegative(String what, double value, String unit) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw refused(what, value, unit, "must be 0 or more");
        }
        return value;
    }

    static double gravity(String what, double value) {
        if (!(value > 0 && value < 1.5)) {
            throw refused("specific gravity of " + what, value, "", "must lie between 0 and 1.5");
        }
        return value;
    }

    /** {@code rule} says what it must be, and a way out if there is one. */
    static IllegalArgumentException refused(String what, Object value, String unit, String rule) {
        return new IllegalArgumentException(
                String.format(Locale.ROOT, "%s is %s%s, but %s.", what, value, unit.isEmpty() ? "" : " " + unit, rule));
    }
}
