package org.standwright.check.wall.statics;

import java.util.OptionalDouble;
import org.standwright.geom.Grid;

/**
 * What hangs on a strip by its bevel and leans with its lower back on the wall, a spacer or a lower strip.
 *
 * <p>The bevel carries all of the weight: V = W, at t/2 in front of the wall. About that point the weight turns with W (e
 * − t/2), against which the lower back presses with R = W (e − t/2) / d; friction of the lower back is left out. Level, the
 * bevel must hold R, and where its wedge is more than that, the hanger's back presses the rest on the wall beside it. So
 * the strip is pulled out with T = max(W tan θ, R) (own derivation, references 3.8).
 *
 * @param weight W, N
 * @param centre e: its centre of mass in front of the wall, mm; no nearer than the bevel's middle
 * @param drop d: from the middle of the bevel down to where the lower back touches, mm
 */
public record Hanging(double weight, double centre, double drop, CleatBevel bevel) {
    public Hanging {
        Given.positive("weight of what hangs", weight, "N");
        Given.positive("drop from the bevel to where the lower back touches", drop, "mm");
        inFront("centre of mass of what hangs", centre, bevel);
    }

    /** V, what the bevel carries, N. */
    public double carried() {
        return weight;
    }

    /** R, with which the lower back presses on what it touches, N. */
    public double lowerPress() {
        return weight * ratio();
    }

    /** What the bevel draws with by itself, without friction: W tan θ, N. */
    public double wedge() {
        return weight * bevel.wedge();
    }

    /** T, the pull outwards on the strip, N. */
    public double pull() {
        return Math.max(wedge(), lowerPress());
    }

    /** R/W = (e − t/2) / d: against {@link CleatBevel#rideOut()}. */
    public double ratio() {
        return arm() / drop;
    }

    /** The least drop with which it does not ride out, mm. */
    public double leastDrop() {
        return arm() / bevel.rideOut();
    }

    public boolean ridesOut() {
        return Grid.less(drop, leastDrop());
    }

    /** The same thing with more or less in it, its centre where it was. */
    public Hanging weighing(double newtons) {
        return new Hanging(newtons, centre, drop, bevel);
    }

    /**
     * With another load in it or on its front lip: the weights together, at their common centre.
     *
     * @param force down, N
     * @param front in front of the wall, mm
     */
    public Hanging with(double force, double front) {
        Given.notNegative("load added", force, "N");
        inFront("load added", front, bevel);
        double all = weight + force;
        return new Hanging(all, (weight * centre + force * front) / all, drop, bevel);
    }

    /**
     * The largest load that may be added at this place before all rides out, N; empty where none does, since it lies so
     * near the wall that it holds the rest down; 0 when it rides out as it is.
     *
     * <p>From W (e − t/2) + F (f − t/2) = (W + F) d tan(θ + φ).
     *
     * @param front f, in front of the wall, mm
     */
    public OptionalDouble mostAdded(double front) {
        inFront("load added", front, bevel);
        double held = drop * bevel.rideOut();
        double beyond = front - bevel.middle() - held;
        if (ridesOut()) {
            return OptionalDouble.of(0);
        }
        return beyond > 0 ? OptionalDouble.of(Math.max(0, weight * (held - arm()) / beyond)) : OptionalDouble.empty();
    }

    private double arm() {
        return centre - bevel.middle();
    }

    private static void inFront(String what, double distance, CleatBevel bevel) {
        if (!(distance >= bevel.middle()) || Double.isInfinite(distance)) {
            throw Given.refused(
                    what,
                    distance,
                    "mm in front of the wall",
                    "must be at least half the strip's thickness, " + bevel.middle()
                            + " mm: it hangs before the strip");
        }
    }
}
