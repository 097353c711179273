package org.standwright.design.frame;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.standwright.unit.Units;

/** Lengths in messages that a maker may copy into the design file and that must then work. */
public final class Exact {
    private Exact() {}

    /** As short as it can be written without changing it by more than a nanometre. */
    public static String length(Units units, double mm) {
        boolean metric = units == Units.MM;
        var value = BigDecimal.valueOf(metric ? mm : mm / 25.4)
                .round(new MathContext(12))
                .setScale(9, RoundingMode.HALF_UP)
                .stripTrailingZeros();
        return (value.scale() < 0 ? value.setScale(0) : value).toPlainString() + (metric ? " mm" : " in");
    }

    /** Rounded up to what a tape shows. */
    public static String up(Units units, double mm) {
        return units.length(onTapeUp(units, mm));
    }

    /** The nearest mark of the tape, mm. */
    public static double onTape(Units units, double mm) {
        return StrictMath.floor(mm / units.tapeStep() + 0.5) * units.tapeStep();
    }

    /** The next mark of the tape at or above a length, mm. */
    public static double onTapeUp(Units units, double mm) {
        return StrictMath.ceil(mm / units.tapeStep() - 1e-9) * units.tapeStep();
    }

    /** The next mark of the tape at or below a length, mm. */
    public static double onTapeDown(Units units, double mm) {
        return StrictMath.floor(mm / units.tapeStep() + 1e-9) * units.tapeStep();
    }
}
