package org.standwright.check.bending;

/** An upright panel under a load along it, hinged at both ends: Euler, π² E I / L². */
public final class Strut {
    private Strut() {}

    /**
     * Load at which it buckles, N.
     *
     * @param stiffness E I, N·mm²
     * @param length between its ends, mm
     */
    public static double buckling(double stiffness, double length) {
        return StrictMath.PI * StrictMath.PI * stiffness / (length * length);
    }
}
