package org.standwright.design.support;

import java.util.Optional;
import org.standwright.design.Designs;
import org.standwright.design.Support;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Size2;

/** Casters for tests, beside {@link Designs#CASTERS}. */
public final class Castered {
    public static final Caster SWIVEL = Designs.CASTERS.caster();
    /** Fixed, without a brake, with a larger plate, wider holes and thicker bolts. */
    public static final Caster FIXED =
            new Caster("fixed 100", 125, new Size2(110, 120), new Size2(86, 90), 11, 10, 0, 100, 60, false, 0.7);

    private Castered() {}

    /** Swivel casters at the operator's side, fixed ones away from it. */
    public static Support.Casters mixed(Support.Bed bed) {
        return new Support.Casters(SWIVEL, Optional.of(FIXED), bed);
    }

    /** Swivel casters at the operator's side, others away from it. */
    public static Support.Casters with(Caster others) {
        return new Support.Casters(SWIVEL, Optional.of(others), Support.Bed.STRIPS);
    }

    public static Caster high(Caster caster, double height) {
        return new Caster(
                caster.name(),
                height,
                caster.plate(),
                caster.holes(),
                caster.holeDiameter(),
                caster.bolt(),
                caster.swivelRadius(),
                caster.wheel(),
                caster.rating(),
                caster.brake(),
                caster.mass());
    }

    public static Caster rated(Caster caster, double rating) {
        return new Caster(
                caster.name(),
                caster.height(),
                caster.plate(),
                caster.holes(),
                caster.holeDiameter(),
                caster.bolt(),
                caster.swivelRadius(),
                caster.wheel(),
                rating,
                caster.brake(),
                caster.mass());
    }
}
