package org.standwright.check.balance.statics;

import org.standwright.design.kit.Size3;

/** Contents of a drawer that a published test prescribes: the superseded rule of the US CPSC for clothing storage. */
public final class DrawerFill {
    /** 8.5 lb/ft³, kg/m³. */
    public static final double DENSITY = 136.16;
    /** 1/8 in of the height stays free, mm. */
    private static final double FREE = 3.175;

    private static final double CUBIC_MM = 1e-9;

    private DrawerFill() {}

    /**
     * Volume that counts, m³.
     *
     * @param inside of the drawer: width and depth, and the height to the lowest obstruction above its bottom
     */
    public static double volume(Size3 inside) {
        return Math.max(0, inside.height() - FREE) * inside.width() * inside.depth() * CUBIC_MM;
    }

    /** kg. */
    public static double mass(Size3 inside) {
        return volume(inside) * DENSITY;
    }
}
