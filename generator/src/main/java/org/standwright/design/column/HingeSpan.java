package org.standwright.design.column;

import org.standwright.design.kit.Hinge;

/** The height that a hinge takes of the carcass beside a door. */
final class HingeSpan {
    private HingeSpan() {}

    /** Half of it, mm. */
    static double half(Hinge hinge) {
        if (hinge instanceof Hinge.Concealed concealed) {
            return Math.max(concealed.height(), concealed.plateSpacing()) / 2;
        }
        return ((Hinge.Butt) hinge).length() / 2;
    }
}
