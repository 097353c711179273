package org.standwright.check.fastener;

import java.util.Arrays;

/**
 * What a fastener in single shear carries sideways, its members touching.
 *
 * <p>The six yield limit equations of NDS 2018 Table 12.3.1A, as quoted. With Re = Fem/Fes, Rt = lm/ls:
 *
 * <pre>
 * k1 = (√(Re + 2 Re² (1 + Rt + Rt²) + Rt² Re³) − Re (1 + Rt)) / (1 + Re)
 * k2 = −1 + √(2 (1 + Re) + 2 Fyb (1 + 2 Re) D² / (3 Fem lm²))
 * k3 = −1 + √(2 (1 + Re)/Re + 2 Fyb (2 + Re) D² / (3 Fem ls²))
 * Im = D lm Fem   Is = D ls Fes   II = k1 D ls Fes   IIIm = k2 D lm Fem / (1 + 2 Re)
 * IIIs = k3 D ls Fem / (2 + Re)   IV = D² √(2 Fem Fyb / (3 (1 + Re)))      each over Rd
 * </pre>
 */
public record YieldModes(SingleShear joint) {
    /** At which the joint yields in this mode, N; not yet divided by Rd. */
    public double yieldLoad(YieldMode mode) {
        double crushing = joint.diameter() * joint.main() * joint.mainBearing();
        return switch (mode) {
            case I_MAIN -> crushing;
            case I_SIDE -> joint.diameter() * joint.side() * joint.sideBearing();
            case II -> k1() * joint.diameter() * joint.side() * joint.sideBearing();
            case III_MAIN -> k2() * crushing / (1 + 2 * re());
            case III_SIDE -> k3() * joint.diameter() * joint.side() * joint.mainBearing() / (2 + re());
            case IV ->
                joint.diameter()
                        * joint.diameter()
                        * StrictMath.sqrt(2 * joint.mainBearing() * joint.bendingYield() / (3 * (1 + re())));
        };
    }

    /** The smallest of the six, at which the joint begins to yield, N. Never to be designed with. */
    public double yieldLoad() {
        return Arrays.stream(YieldMode.values())
                .mapToDouble(this::yieldLoad)
                .min()
                .orElseThrow();
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

    private double k1() {
        double rt = joint.main() / joint.side();
        double re = re();
        double root = StrictMath.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re);
        return (root - re * (1 + rt)) / (1 + re);
    }

    private double k2() {
        return -1 + StrictMath.sqrt(2 * (1 + re()) + 2 * (1 + 2 * re()) * bending(joint.main()));
    }

    private double k3() {
        return -1 + StrictMath.sqrt(2 * (1 + re()) / re() + 2 * (2 + re()) * bending(joint.side()));
    }

    /** Fyb D² / (3 Fem l²). */
    private double bending(double length) {
        double slender = joint.diameter() / length;
        return joint.bendingYield() * slender * slender / (3 * joint.mainBearing());
    }

    private double re() {
        return joint.mainBearing() / joint.sideBearing();
    }
}
