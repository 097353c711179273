package org.standwright.check.wall.statics;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.check.fastener.CombinedLoad;
import org.standwright.check.fastener.DowelBearing;
import org.standwright.check.fastener.Fastener;
import org.standwright.check.fastener.FastenerKind;
import org.standwright.check.fastener.GappedYield;
import org.standwright.check.fastener.LagScrew;
import org.standwright.check.fastener.LoadDuration;
import org.standwright.check.fastener.NumberedScrew;
import org.standwright.check.fastener.SingleShear;
import org.standwright.check.fastener.Withdrawal;
import org.standwright.check.fastener.YieldMode;
import org.standwright.geom.Grid;

/**
 * One screw through a plywood strip into the side grain of a stud, or through a holder's back into the face of its hanger.
 *
 * <p>Withdrawal, lateral yield with a gap, and both at once by the formulas of the NDS in {@link
 * org.standwright.check.fastener}. The load is along the stud's grain. Plywood bears with the Fe of thin fasteners, 3350 psi
 * at G 0.42, also under lags (from memory, unconfirmed); for a lag's Rd it counts as loaded across its grain, which is on the
 * safe side.
 */
public record WallScrew(Fastener fastener, ScrewedThrough through, ScrewedInto into, LoadDuration duration) {
    /** How deep a stud is, a 2x4 (PS 20, as quoted in references 4), mm: what goes deeper holds nothing. */
    public static final double STUD_DEPTH = 88.9;

    private static final double QUARTER_INCH = 6.35;
    private static final double ACROSS = 90;

    public WallScrew {
        if (fastener.kind() == FastenerKind.NAIL) {
            throw new IllegalArgumentException("a cleat's fastener is the nail '" + fastener
                    + "', but must be a screw; take a wood screw or a lag.");
        }
    }

    /**
     * A wood screw into a stud, rated from 6 D of thread in it, tip included; what comes out at its back does not count.
     *
     * @param length of the screw, mm
     * @param gravity of the stud
     */
    public static WallScrew intoStud(
            NumberedScrew screw, double length, ScrewedThrough through, double gravity, LoadDuration duration) {
        Given.positive("length of the screw", length, "mm");
        double reach = Math.max(0, length - through.depth());
        double beyond = Math.max(0, reach - STUD_DEPTH);
        double thread = Math.max(0, screw.threadBeyond(length, through.depth()) - beyond);
        var into = new ScrewedInto(gravity, reach - beyond, thread, ScrewedInto.Short.HOLDS_NOTHING);
        return new WallScrew(screw, through, into, duration);
    }

    /**
     * A lag into a stud, rated from 4 D of thread in it.
     *
     * @param penetration into the stud without the tip, mm
     * @param thread of that, threaded, mm
     */
    public static WallScrew lagIntoStud(
            LagScrew lag,
            double penetration,
            double thread,
            ScrewedThrough through,
            double gravity,
            LoadDuration duration) {
        var into = new ScrewedInto(gravity, penetration, thread, ScrewedInto.Short.HOLDS_NOTHING);
        return new WallScrew(lag, through, into, duration);
    }

    /**
     * A wood screw from inside a holder through its back into the face of its hanger. Panels seldom leave it 6 D: then the
     * formulas count all the same, and {@link #isRated()} says no.
     *
     * @param length of the screw, mm
     * @param thickness of the hanger, mm, out of which the screw must not come
     * @param gravity of the hanger
     */
    public static WallScrew intoHanger(
            NumberedScrew screw,
            double length,
            ScrewedThrough back,
            double thickness,
            double gravity,
            LoadDuration duration) {
        Given.positive("length of the screw", length, "mm");
        if (Grid.less(back.depth() + thickness, length)) {
            throw Given.refused(
                    "length of the screw",
                    length,
                    "mm",
                    "must be no more than back and hanger together, " + (back.depth() + thickness)
                            + " mm; take a shorter one");
        }
        double reach = Math.max(0, length - back.depth());
        double thread = screw.threadBeyond(length, back.depth());
        var into = new ScrewedInto(gravity, reach, thread, ScrewedInto.Short.COUNTS_AS_IT_IS);
        return new WallScrew(screw, back, into, duration);
    }

    /** Whether the NDS rates it: 6 D of thread in the wood with the tip, of a lag 4 D without. */
    public boolean isRated() {
        return !Grid.less(into.thread(), fastener.leastPenetration());
    }

    /** W'p, what it may be pulled with, N; 0 where it holds nothing. */
    public double withdrawal() {
        return holds() ? new Withdrawal(fastener, into.gravity()).perMm() * into.thread() * duration.factor() : 0;
    }

    /** Z', what it may carry across the gap, N; 0 where it holds nothing. */
    public double lateral() {
        return yielding().map(GappedYield::allowable).orElse(0.0) * duration.factor();
    }

    /** How it yields sideways; empty where it holds nothing. */
    public Optional<YieldMode> mode() {
        return yielding().map(GappedYield::governing);
    }

    /**
     * What draws its head through the strip, N; empty where no source rates it. A short load adds nothing here, a lasting
     * one takes off.
     */
    public OptionalDouble pullThrough() {
        var held = through.pullThrough();
        return held.isPresent()
                ? OptionalDouble.of(held.getAsDouble() * Math.min(1, duration.factor()))
                : OptionalDouble.empty();
    }

    /** How much of it a load uses. */
    public ScrewUse use(ScrewLoad load) {
        double out = share(load.out(), withdrawal());
        double sideways = share(load.sideways(), lateral());
        double head =
                pullThrough().isPresent() ? share(load.out(), pullThrough().getAsDouble()) : 0;
        return new ScrewUse(out, sideways, combined(load), out + sideways, head);
    }

    private double combined(ScrewLoad load) {
        return withdrawal() > 0 && lateral() > 0
                ? new CombinedLoad(lateral(), withdrawal()).used(fastener.kind(), load.sideways(), load.out())
                : share(Math.max(load.out(), load.sideways()), 0);
    }

    /** Of nothing nothing is used; what holds nothing is used beyond any number by the least load. */
    private static double share(double load, double held) {
        return load == 0 ? 0 : load / held;
    }

    /** Half the tip does not bear: less than that cannot. */
    private boolean holds() {
        return (isRated() || into.whenShort() == ScrewedInto.Short.COUNTS_AS_IT_IS)
                && Grid.less(fastener.tip() / 2, into.penetration());
    }

    private Optional<GappedYield> yielding() {
        return holds() ? Optional.of(new GappedYield(shear(), through.gap())) : Optional.empty();
    }

    private SingleShear shear() {
        return new SingleShear(
                into.penetration() - fastener.tip() / 2,
                through.thickness(),
                mainBearing(),
                DowelBearing.small(through.gravity()),
                fastener.root(),
                fastener.bendingYield(),
                ACROSS,
                !Grid.less(fastener.diameter(), QUARTER_INCH));
    }

    private double mainBearing() {
        return DowelBearing.along(fastener, into.gravity());
    }
}
