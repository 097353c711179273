package org.standwright.router.machining;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Lengths for names of layers and for legends: millimetres to a hundredth, '9', '18.2'. */
public final class Mm {
    private Mm() {}

    public static String of(double mm) {
        var rounded = BigDecimal.valueOf(mm).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }
}
