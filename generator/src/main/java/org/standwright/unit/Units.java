package org.standwright.unit;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Optional;

/** The units a maker reads back: on paper, on the command line, and for plain numbers in a design file. */
public enum Units {
    /** Millimetres to one decimal, kilograms. */
    @JsonProperty("mm")
    MM("mm", "kg", "N", 0),
    /** Inches as fractions down to 1/32, pounds. */
    @JsonProperty("in")
    INCH("in", "lb", "lbf", 32),
    /** Inches as fractions down to 1/64, pounds. */
    @JsonProperty("in/64")
    INCH_64("in", "lb", "lbf", 64);

    private final String lengthUnit;
    private final String massUnit;
    private final String forceUnit;
    private final int denominator;

    Units(String lengthUnit, String massUnit, String forceUnit, int denominator) {
        this.lengthUnit = lengthUnit;
        this.massUnit = massUnit;
        this.forceUnit = forceUnit;
        this.denominator = denominator;
    }

    /** The units that files call so: 'mm', 'in' or 'in/64'. */
    public static Optional<Units> named(String word) {
        return Arrays.stream(values())
                .filter(units -> units.word().equals(word))
                .findFirst();
    }

    /** What files call them. */
    public String word() {
        return this == INCH_64 ? "in/64" : lengthUnit;
    }

    /** Unit of a plain number that is a quantity of this kind. */
    public String unitOf(Measure measure) {
        return switch (measure) {
            case LENGTH -> lengthUnit;
            case MASS -> massUnit;
            case FORCE -> forceUnit;
        };
    }

    /** What lengths are written in, in full: 'millimetres', 'inches'. */
    public String lengthWord() {
        return this == MM ? "millimetres" : "inches";
    }

    /** The step that sizes are rounded to so that a tape can show them: 1 mm or 1/16 in; mm. */
    public double tapeStep() {
        return this == MM ? 1 : 25.4 / 16;
    }

    /** '876 mm', '34 1/2 in'. */
    public String length(double mm) {
        return bareLength(mm) + " " + lengthUnit;
    }

    /** '876', '34 1/2': a length where the unit is said elsewhere. */
    public String bareLength(double mm) {
        return this == MM ? decimal(mm, 1) : fraction(mm / 25.4);
    }

    /** The length that {@link #bareLength} shows for this one, mm. */
    public double shown(double mm) {
        return this == MM
                ? settled(mm).setScale(1, RoundingMode.HALF_UP).doubleValue()
                : Math.signum(mm) * parts(Math.abs(mm) / 25.4) * 25.4 / denominator;
    }

    /** '38.2 kg', '84.2 lb'. */
    public String mass(double kg) {
        return decimal(kg / Measure.MASS.of(1, massUnit), 1) + " " + massUnit;
    }

    /** '150 N', '33.7 lbf'. */
    public String force(double newton) {
        return decimal(newton / Measure.FORCE.of(1, forceUnit), 1) + " " + forceUnit;
    }

    /** '1.25 m²', '13.5 ft²'. */
    public String area(double mm2) {
        return this == MM ? decimal(mm2 / 1e6, 2) + " m\u00b2" : decimal(mm2 / (304.8 * 304.8), 1) + " ft\u00b2";
    }

    /** '7.4 m', '24.3 ft': a length to buy, rounded up. */
    public String run(double mm) {
        double unit = this == MM ? 1000 : 304.8;
        double tenths = Math.ceil(mm / unit * 10 - 1e-6);
        return decimal(tenths / 10, 1) + (this == MM ? " m" : " ft");
    }

    private String fraction(double inches) {
        long parts = parts(Math.abs(inches));
        long whole = parts / denominator;
        long numerator = parts % denominator;
        var sign = inches < 0 && parts > 0 ? "-" : "";
        if (numerator == 0) {
            return sign + whole;
        }
        long common = Long.lowestOneBit(numerator);
        var rest = numerator / common + "/" + denominator / common;
        return sign + (whole == 0 ? rest : whole + " " + rest);
    }

    private long parts(double inches) {
        return settled(inches * denominator).setScale(0, RoundingMode.HALF_UP).longValueExact();
    }

    /** Without the noise of sums, so that halves are rounded one way wherever they come from. */
    private static BigDecimal settled(double value) {
        return BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP);
    }

    private static String decimal(double value, int places) {
        var rounded = settled(value).setScale(places, RoundingMode.HALF_UP);
        var plain = rounded.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }
}
