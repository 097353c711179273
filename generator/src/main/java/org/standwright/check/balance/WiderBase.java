package org.standwright.check.balance;

import java.util.Optional;
import org.standwright.check.Remedy;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Side;

/** Feet farther out on the same plan: a plinth without toe space, casters that do not swivel. */
record WiderBase(StandDesign design) {
    /** What widens the base at the side over which it tips, if anything does. */
    Optional<Remedy> at(Side side) {
        if (design.support() instanceof Support.Plinth plinth && side == Side.FRONT && plinth.toeSpace() > 0) {
            return Optional.of(Remedy.ofStand(
                    "a plinth without toe space",
                    now -> supported(now, new Support.Plinth(plinth.height(), 0, plinth.pads()))));
        }
        return design.support() instanceof Support.Casters casters ? fixed(casters, side) : Optional.empty();
    }

    /** Two fixed casters away from the operator; those at the operator's side have to swivel and lock. */
    private Optional<Remedy> fixed(Support.Casters casters, Side side) {
        var operator = design.machine().operator().turned(design.place().turn());
        var others = casters.others().orElse(casters.caster());
        if (side == operator || others.trail() == 0) {
            return Optional.empty();
        }
        return Optional.of(Remedy.ofStand(
                "fixed casters of the same height at the " + EdgeSide.word(operator.turned(180)),
                now -> supported(
                        now, new Support.Casters(casters.caster(), Optional.of(fixed(others)), casters.bed()))));
    }

    private static Caster fixed(Caster swivel) {
        return new Caster(
                swivel.name() + ", fixed",
                swivel.height(),
                swivel.plate(),
                swivel.holes(),
                swivel.holeDiameter(),
                swivel.bolt(),
                0,
                swivel.wheel(),
                swivel.rating(),
                false,
                swivel.mass());
    }

    private static Optional<StandDesign> supported(StandDesign design, Support support) {
        return Optional.of(Redesign.of(design).support(support).done());
    }
}
