package org.standwright.check.fastener;

/** The kinds of fastener that the handbooks know, with the coefficients that go with each. */
public enum FastenerKind {
    WOOD_SCREW(2850, 15_700, 2, 1, 0, 6),
    LAG_SCREW(1800, 8100, 1.5, 0.75, 0.75, 4),
    NAIL(1380, 7850, 2.5, 1, 0, 6);

    private final double allowable;
    private final double ultimate;
    private final double ofGravity;
    private final double ofDiameter;
    private final double inEndGrain;
    private final double leastPenetration;

    FastenerKind(
            double allowable,
            double ultimate,
            double ofGravity,
            double ofDiameter,
            double inEndGrain,
            double leastPenetration) {
        this.allowable = allowable;
        this.ultimate = ultimate;
        this.ofGravity = ofGravity;
        this.ofDiameter = ofDiameter;
        this.inEndGrain = inEndGrain;
        this.leastPenetration = leastPenetration;
    }

    /** c of the allowable withdrawal c G^a D^b, lbf per inch. */
    double allowable() {
        return allowable;
    }

    /** c of the ultimate withdrawal, lbf per inch. */
    double ultimate() {
        return ultimate;
    }

    /** The exponent of G. */
    double ofGravity() {
        return ofGravity;
    }

    /** The exponent of D. */
    double ofDiameter() {
        return ofDiameter;
    }

    /** The share of the withdrawal that is left in end grain; 0 for not rated. */
    double inEndGrain() {
        return inEndGrain;
    }

    /** Least penetration, diameters. */
    double leastPenetration() {
        return leastPenetration;
    }
}
