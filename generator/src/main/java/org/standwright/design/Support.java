package org.standwright.design;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Leveler;

/** What the carcass stands on. */
public sealed interface Support {

    /**
     * Four casters under two layers of wood.
     *
     * @param caster all four, or the two at the operator's side when {@code others} is given
     * @param others the two away from the operator: as high, but without a brake or fixed
     */
    record Casters(Caster caster, Optional<Caster> others, Bed bed) implements Support {}

    /** Four levelers under two layers of wood. */
    record Levelers(Leveler leveler, Bed bed) implements Support {}

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

    /** The two layers of wood that casters and levelers are fixed to. */
    enum Bed {
        /** Strips along the sides. */
        @JsonProperty("strips")
        STRIPS,
        /** The bottom doubled over the whole plan. */
        @JsonProperty("doubled-bottom")
        DOUBLED_BOTTOM
    }
}
