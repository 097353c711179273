package org.standwright.design.column;

import org.standwright.design.kit.Hinge;

/** The height that a hinge takes of a door and of the carcass beside it. */
public final class HingeSpan {
    private HingeSpan() {}

    /** Half of it, mm. */
    public static double half(Hinge hinge) {
        if (hinge instanceof Hinge.Concealed concealed) {
            return Math.max(concealed.height(), Math.max(concealed.plateSpacing(), concealed.cup())) / 2;
        }
        return ((Hinge.Butt) hinge).length() / 2;
    }
}
