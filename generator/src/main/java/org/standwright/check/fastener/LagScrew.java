package org.standwright.check.fastener;

/** Lag screws with a reduced body: sizes of NDS Appendix L2 and yield strengths of Table I1, as quoted. */
public enum LagScrew implements Fastener {
    QUARTER(0.25, 0.173, 70_000),
    FIVE_SIXTEENTHS(0.3125, 0.227, 60_000),
    THREE_EIGHTHS(0.375, 0.265, 45_000),
    HALF(0.5, 0.371, 45_000);

    private final double diameter;
    private final double root;
    private final double bendingYield;

    LagScrew(double diameter, double root, double bendingYield) {
        this.diameter = diameter;
        this.root = root;
        this.bendingYield = bendingYield;
    }

    @Override
    public FastenerKind kind() {
        return FastenerKind.LAG_SCREW;
    }

    @Override
    public double diameter() {
        return diameter * Customary.INCH;
    }

    @Override
    public double root() {
        return root * Customary.INCH;
    }

    @Override
    public double bendingYield() {
        return bendingYield * Customary.PSI;
    }
}
