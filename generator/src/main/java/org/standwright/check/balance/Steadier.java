package org.standwright.check.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.check.Remedy;
import org.standwright.check.balance.statics.TippingCase;
import org.standwright.check.balance.statics.TippingEdge;
import org.standwright.design.Redesign;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.geom.Vec3;
import org.standwright.unit.Units;

/**
 * What makes a stand tip less, the cheapest first: a wider base, ballast, a lock for drawers, an anchor, a larger plan.
 *
 * @param ratio of what holds over what tips that is wanted
 * @param lock whether one for drawers is among them
 */
record Steadier(Standing standing, TippingCase tipping, double ratio, Verdict.Lock lock) {
    /** More ballast than this under one stand is no cure, kg; common practice, no source. */
    private static final double MOST_BALLAST = 50;

    private static final int[] LARGER = {1, 2, 4};
    /** 50 mm or 2 in. */
    private static final double LARGER_STEP = 50;

    private static final double LARGER_STEP_INCH = 50.8;
    /** 5 kg or 10 lb. */
    private static final double BALLAST_STEP = 5;

    private static final double BALLAST_STEP_INCH = 10 * 0.45359237;

    List<Remedy> against(TippingEdge edge) {
        var side = EdgeSide.of(edge);
        var remedies = new ArrayList<Remedy>();
        new WiderBase(design()).at(side).ifPresent(remedies::add);
        ballast().ifPresent(remedies::add);
        interlock().ifPresent(remedies::add);
        anchor().ifPresent(remedies::add);
        for (int steps : LARGER) {
            double by = steps * (isMetric() ? LARGER_STEP : LARGER_STEP_INCH);
            remedies.add(new LargerPlan(side, by).remedy(design()));
        }
        return remedies;
    }

    private StandDesign design() {
        return standing.loaded().design();
    }

    private boolean isMetric() {
        return standing.loaded().units() == Units.MM;
    }

    /** As much as it takes, but not more than can be got in and fixed under a cabinet. */
    private Optional<Remedy> ballast() {
        var carcass = standing.loaded().stand().carcass();
        var at = new Vec3(
                carcass.centre().x(), carcass.centre().y(), carcass.min().z());
        var needed = tipping.ballast(ratio, at, isMetric() ? BALLAST_STEP : BALLAST_STEP_INCH);
        if (needed.isEmpty() || needed.getAsDouble() == 0 || needed.getAsDouble() > MOST_BALLAST) {
            return Optional.empty();
        }
        double kilograms = needed.getAsDouble();
        return Optional.of(Remedy.ofStand(
                standing.loaded().units().mass(kilograms) + " of ballast more, fixed to the carcass's bottom",
                design -> steady(design, design.steady().with(design.steady().ballast() + kilograms))));
    }

    private Optional<Remedy> interlock() {
        long drawers = standing.openings().stream().filter(Opening::drawer).count();
        return lock == Verdict.Lock.OF_NO_USE || standing.isInterlocked() || drawers < 2
                ? Optional.empty()
                : Optional.of(Remedy.ofStand(
                        "a mechanical lock that lets only one drawer of each bay open",
                        design -> steady(design, design.steady().interlocked())));
    }

    /** Not for what is meant to roll. */
    private Optional<Remedy> anchor() {
        return design().support() instanceof Support.Casters
                ? Optional.empty()
                : Optional.of(Remedy.ofStand(
                        "an anchor at the top of the carcass, to studs or masonry",
                        design -> steady(design, design.steady().anchored(Steady.Anchor.WALL))));
    }

    private static Optional<StandDesign> steady(StandDesign design, Steady steady) {
        return Optional.of(Redesign.of(design).steady(steady).done());
    }
}
