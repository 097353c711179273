package org.standwright.check;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.standwright.unit.Measure;
import org.standwright.unit.Units;

/** Kinds of figures that rules work with, and how a maker reads them. */
public enum Quantity {
    /** mm, as on a tape. */
    LENGTH,
    /** mm, finer than a tape: how far something gives. */
    SAG,
    /** kg. */
    MASS,
    /** N. */
    FORCE,
    /** N/mm². */
    STRESS,
    /** Load on an area, N/mm². */
    PRESSURE,
    /** Force along a line, N/mm. */
    LINE_LOAD,
    /** N·mm. */
    MOMENT,
    /** N·mm². */
    STIFFNESS,
    /** kg/m³. */
    DENSITY,
    /** Degrees. */
    ANGLE,
    /** A plain number. */
    RATIO,
    /** How many. */
    COUNT;

    private static final double MM_PER_INCH = 25.4;
    private static final double N_PER_POUND = Measure.FORCE.of(1, "lbf");
    private static final double PSI = N_PER_POUND / (MM_PER_INCH * MM_PER_INCH);
    private static final double FOOT_POUND = N_PER_POUND * 12 * MM_PER_INCH;
    /** kg/m³ in a pound per cubic foot. */
    private static final double POUND_PER_CUBIC_FOOT = 0.45359237 / (0.3048 * 0.3048 * 0.3048);

    /** '1.3 mm', '120 lbf': a value of this kind, given in the unit above. */
    public String words(double value, Units units) {
        boolean metric = units == Units.MM;
        return switch (this) {
            case LENGTH -> units.length(value);
            case SAG -> metric ? figure(value, 2) + " mm" : figure(value / MM_PER_INCH, 3) + " in";
            case MASS -> units.mass(value);
            case FORCE -> units.force(value);
            case STRESS -> metric ? figure(value, 2) + " N/mm\u00b2" : figure(value / PSI, 0) + " psi";
            case PRESSURE ->
                metric ? figure(value * 1000, 2) + " kN/m\u00b2" : figure(value / PSI * 144, 1) + " lbf/ft\u00b2";
            case LINE_LOAD ->
                metric ? figure(value, 2) + " N/mm" : figure(value * MM_PER_INCH / N_PER_POUND, 2) + " lbf/in";
            case MOMENT ->
                metric ? figure(value / 1000, 1) + " N\u00b7m" : figure(value / FOOT_POUND, 1) + " lbf\u00b7ft";
            case STIFFNESS ->
                metric
                        ? scientific(value) + " N\u00b7mm\u00b2"
                        : scientific(value / (PSI * Math.pow(MM_PER_INCH, 4))) + " lbf\u00b7in\u00b2";
            case DENSITY ->
                metric ? figure(value, 0) + " kg/m\u00b3" : figure(value / POUND_PER_CUBIC_FOOT, 1) + " lb/ft\u00b3";
            case ANGLE -> figure(value, 1) + "\u00b0";
            case RATIO -> figure(value, 2);
            case COUNT -> figure(value, 0);
        };
    }

    /** At most so many decimals; zeros at the end are left out. */
    private static String figure(double value, int places) {
        var plain = BigDecimal.valueOf(value)
                .setScale(9, RoundingMode.HALF_UP)
                .setScale(places, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    /** Four digits and a power of ten. */
    private static String scientific(double value) {
        return String.format(java.util.Locale.ROOT, "%.3e", value);
    }
}
