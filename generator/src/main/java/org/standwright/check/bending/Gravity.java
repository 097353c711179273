package org.standwright.check.bending;

import org.standwright.part.Material;

/** What a mass weighs. */
final class Gravity {
    /** N per kg, the standard value. */
    private static final double STANDARD = 9.80665;

    private Gravity() {}

    /** Weight of a mass in kg, N. */
    static double newtons(double mass) {
        return mass * STANDARD;
    }

    /** Weight of a layer of a material, N per mm² of its face. */
    static double ofLayer(Material material) {
        return newtons(material.density() * 1e-9 * material.thickness());
    }
}
