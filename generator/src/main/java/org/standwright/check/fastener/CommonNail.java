package org.standwright.check.fastener;

/** Common nails, smooth: sizes as the NDS is quoted. */
public enum CommonNail implements Fastener {
    SIX_PENNY(0.113, 2),
    EIGHT_PENNY(0.131, 2.5),
    TEN_PENNY(0.148, 3),
    SIXTEEN_PENNY(0.162, 3.5);

    private final double diameter;
    private final double length;

    CommonNail(double diameter, double length) {
        this.diameter = diameter;
        this.length = length;
    }

    @Override
    public FastenerKind kind() {
        return FastenerKind.NAIL;
    }

    @Override
    public double diameter() {
        return diameter * Customary.INCH;
    }

    @Override
    public double root() {
        return diameter();
    }

    /** mm. */
    public double length() {
        return length * Customary.INCH;
    }

    @Override
    public double bendingYield() {
        return WireYield.of(diameter) * Customary.PSI;
    }
}
