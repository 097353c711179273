package org.standwright.geom;

import java.util.Locale;

/** Checks of arguments whose messages name the thing, its value and the rule. */
public final class Require {
    private Require() {}

    /** Returns {@code value} if it is a finite length above 0, else throws. */
    public static double positive(String what, double value, String owner) {
        if (!(value > Grid.STEP) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s of '%s' is %s mm, but must be more than 0.", what, owner, value));
        }
        return value;
    }

    /** Returns {@code value} if it is finite and not below 0, else throws. */
    public static double notNegative(String what, double value, String owner) {
        if (!(value >= 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s of '%s' is %s, but must be 0 or more.", what, owner, value));
        }
        return value;
    }

    /** Returns {@code value} if it holds more than blanks, else throws. */
    public static String named(String what, String value) {
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException(what + " has no name; give it one that a maker can find again.");
        }
        return value;
    }
}
