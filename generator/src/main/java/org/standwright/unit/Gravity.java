package org.standwright.unit;

/** What a mass weighs. */
public final class Gravity {
    /** N per kg, the standard value. */
    public static final double STANDARD = 9.80665;

    private Gravity() {}

    /** Weight of a mass in kg, N. */
    public static double newtons(double mass) {
        return mass * STANDARD;
    }
}
