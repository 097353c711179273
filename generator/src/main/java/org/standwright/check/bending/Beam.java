package org.standwright.check.bending;

/**
 * How a beam is held and loaded, with its greatest deflection and moment in closed form. The beam is straight, of one
 * section, bends little, and shear is left out.
 *
 * <p>Source: Wood Handbook, FPL-GTR-190, equation 9-2 and table 9-1, shear term left out. The load is the total, in N;
 * spans are mm, stiffness E I is N·mm², deflections are mm and moments N·mm.
 */
public enum Beam {
    /** On two supports, evenly loaded: 5 W L³ / (384 E I). */
    SIMPLE_UNIFORM(5.0 / 384, 1.0 / 8),
    /** On two supports, loaded in the middle: W L³ / (48 E I). */
    SIMPLE_CENTRE(1.0 / 48, 1.0 / 4),
    /** On two supports, half the load at each third of the span: 23 W L³ / (1296 E I). */
    SIMPLE_THIRDS(23.0 / 1296, 1.0 / 6),
    /** Both ends held against turning, evenly loaded: W L³ / (384 E I); the moment is that at the ends. */
    FIXED_UNIFORM(1.0 / 384, 1.0 / 12),
    /** Both ends held against turning, loaded in the middle: W L³ / (192 E I). */
    FIXED_CENTRE(1.0 / 192, 1.0 / 8),
    /** One end held against turning, the other on a support, evenly loaded: W L³ / (185 E I), as printed. */
    PROPPED_UNIFORM(1.0 / 185, 1.0 / 8),
    /** One end held against turning, the other free, evenly loaded: W L³ / (8 E I). */
    CANTILEVER_UNIFORM(1.0 / 8, 1.0 / 2),
    /** One end held against turning, loaded at the other: W L³ / (3 E I). */
    CANTILEVER_END(1.0 / 3, 1);

    private final double deflection;
    private final double moment;

    Beam(double deflection, double moment) {
        this.deflection = deflection;
        this.moment = moment;
    }

    /**
     * Greatest deflection, mm.
     *
     * @param load W, total, N
     * @param span L, mm
     * @param stiffness E I, N·mm²
     */
    public double deflection(double load, double span, double stiffness) {
        return deflection * load * span * span * span / stiffness;
    }

    /**
     * Greatest bending moment, N·mm.
     *
     * @param load W, total, N
     * @param span L, mm
     */
    public double moment(double load, double span) {
        return moment * load * span;
    }
}
