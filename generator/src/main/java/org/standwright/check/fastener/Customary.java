package org.standwright.check.fastener;

import org.standwright.unit.Measure;

/** Inches, pounds and what is made of them, exactly as defined. */
final class Customary {
    static final double INCH = Measure.LENGTH.of(1, "in");
    static final double POUND = Measure.FORCE.of(1, "lbf");
    /** N/mm². */
    static final double PSI = POUND / (INCH * INCH);
    /** N/mm. */
    static final double POUND_PER_INCH = POUND / INCH;

    private Customary() {}
}
