package org.standwright.check.fastener;

import java.util.Arrays;
import java.util.Comparator;
import java.util.function.ToDoubleFunction;
import org.standwright.geom.Require;

/**
 * One fastener through a side member into a main member, pushed sideways.
 *
 * @param main length lm that bears in the main member: what is in it, less half the tip, mm
 * @param side thickness ls of the side member, mm
 * @param mainBearing Fem of the main member, N/mm²
 * @param sideBearing Fes of the side member, N/mm²
 * @param diameter D that bends and presses: the root of a thread, mm
 * @param bendingYield Fyb, N/mm²
 * @param angle greatest angle between the load and the grain of either member, degrees; counts from 1/4 in up
 * @param thick whether its nominal diameter is 1/4 in or more
 */
public record SingleShear(
        double main,
        double side,
        double mainBearing,
        double sideBearing,
        double diameter,
        double bendingYield,
        double angle,
        boolean thick) {
    private static final double QUARTER_INCH = 0.25;

    public SingleShear {
        Require.positive("length in the main member", main, "single shear");
        Require.positive("side member", side, "single shear");
        Require.positive("bearing strength of the main member", mainBearing, "single shear");
        Require.positive("bearing strength of the side member", sideBearing, "single shear");
        Require.positive("diameter", diameter, "single shear");
        Require.positive("bending yield strength", bendingYield, "single shear");
        if (!(angle >= 0 && angle <= 90)) {
            throw new IllegalArgumentException("angle to the grain is " + angle + "°, but must lie in 0 to 90.");
        }
    }

    /**
     * Along the grain of both.
     *
     * @param penetration of the fastener into the main member, mm: of a screw or nail with its tip, and more than half of
     *     that; of a lag without
     */
    public static SingleShear along(
            Fastener fastener, double penetration, double side, double mainGravity, double sideGravity) {
        return of(
                fastener,
                penetration,
                side,
                DowelBearing.along(fastener, mainGravity),
                DowelBearing.along(fastener, sideGravity),
                0);
    }

    /** Across the grain of both. */
    public static SingleShear across(
            Fastener fastener, double penetration, double side, double mainGravity, double sideGravity) {
        return of(
                fastener,
                penetration,
                side,
                DowelBearing.across(fastener, mainGravity),
                DowelBearing.across(fastener, sideGravity),
                90);
    }

    private static SingleShear of(
            Fastener fastener, double penetration, double side, double mainBearing, double sideBearing, double angle) {
        return new SingleShear(
                penetration - fastener.tip() / 2,
                side,
                mainBearing,
                sideBearing,
                fastener.root(),
                fastener.bendingYield(),
                angle,
                fastener.diameter() >= QUARTER_INCH * Customary.INCH);
    }

    /** The mode in which it carries least. */
    YieldMode governing(ToDoubleFunction<YieldMode> yieldLoad) {
        return Arrays.stream(YieldMode.values())
                .min(Comparator.comparingDouble(mode -> yieldLoad.applyAsDouble(mode) / reduction(mode)))
                .orElseThrow();
    }

    /** Rd, which brings a yield load down to an allowable one (NDS Table 12.3.1B, as quoted); without a unit. */
    double reduction(YieldMode mode) {
        double inches = diameter / Customary.INCH;
        double grain = thick ? 1 + 0.25 * angle / 90 : 1;
        if (inches < QUARTER_INCH) {
            return grain * (inches <= 0.17 ? 2.2 : 10 * inches + 0.5);
        }
        return grain * mode.reduction();
    }
}
