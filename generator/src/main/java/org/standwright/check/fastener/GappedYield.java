package org.standwright.check.fastener;

import org.standwright.geom.Require;

/**
 * What a fastener in single shear carries sideways across a gap, as a screw through plasterboard, which counts as air.
 *
 * <p>General dowel equations in the manner of AWC Technical Report 12, their form from memory, unconfirmed; without a gap
 * they equal {@link YieldModes}, which the tests hold them to. With q = Fe D, M = Fyb D³/6 and gap g, P solves
 * A P² + B P + C = 0:
 *
 * <pre>
 * II    A = 1/(4 qs) + 1/(4 qm)   B = ls/2 + g + lm/2   C = −qs ls²/4 − qm lm²/4
 * IIIm  A = 1/(2 qs) + 1/(4 qm)   B = g + lm/2          C = −M − qm lm²/4
 * IIIs  A = 1/(4 qs) + 1/(2 qm)   B = ls/2 + g          C = −qs ls²/4 − M
 * IV    A = 1/(2 qs) + 1/(2 qm)   B = g                 C = −2 M            I: P = q l
 * </pre>
 *
 * @param gap between the members, mm
 */
public record GappedYield(SingleShear joint, double gap) {
    public GappedYield {
        Require.notNegative("gap", gap, "single shear");
    }

    /** At which the joint yields in this mode, N; not yet divided by Rd. */
    public double yieldLoad(YieldMode mode) {
        double inMain = joint.mainBearing() * joint.diameter();
        double inSide = joint.sideBearing() * joint.diameter();
        double lm = joint.main();
        double ls = joint.side();
        double mainTurns = inMain * lm * lm / 4;
        double sideTurns = inSide * ls * ls / 4;
        double bends = joint.bendingYield() * StrictMath.pow(joint.diameter(), 3) / 6;
        return switch (mode) {
            case I_MAIN -> inMain * lm;
            case I_SIDE -> inSide * ls;
            case II -> root(1 / (4 * inSide) + 1 / (4 * inMain), ls / 2 + gap + lm / 2, sideTurns + mainTurns);
            case III_MAIN -> root(1 / (2 * inSide) + 1 / (4 * inMain), gap + lm / 2, bends + mainTurns);
            case III_SIDE -> root(1 / (4 * inSide) + 1 / (2 * inMain), ls / 2 + gap, sideTurns + bends);
            case IV -> root(1 / (2 * inSide) + 1 / (2 * inMain), gap, 2 * bends);
        };
    }

    /** The smallest over Rd under a load of ten years, N. */
    public double allowable() {
        var governing = governing();
        return yieldLoad(governing) / joint.reduction(governing);
    }

    /** Which mode that is. */
    public YieldMode governing() {
        return joint.governing(this::yieldLoad);
    }

    /**
     * The positive root of a P² + b P − c = 0, in the form that neither cancels nor divides by a small {@code a} where
     * wide gaps and hard wood leave little of it.
     */
    private static double root(double a, double b, double c) {
        return 2 * c / (b + StrictMath.sqrt(b * b + 4 * a * c));
    }
}
