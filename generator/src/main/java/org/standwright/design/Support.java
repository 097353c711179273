package org.standwright.design;

/** What the carcass stands on. */
public sealed interface Support {

    /** Four casters under two blocks of two layers that run along the sides. */
    record Casters(Caster caster) implements Support {}

    /** Four levelers under two blocks of two layers that run along the sides. */
    record Levelers(Leveler leveler) implements Support {}

    /**
     * A frame of the carcass's own sheet on pads.
     *
     * @param height of the frame, mm
     * @param toeSpace how far its front stands back from the carcass's front edge, mm
     * @param pads between wood and floor, mm
     */
    record Plinth(double height, double toeSpace, double pads) implements Support {}

    /**
     * The carcass stands on the floor, on pads only.
     *
     * @param pads between wood and floor, mm
     */
    record None(double pads) implements Support {}
}
