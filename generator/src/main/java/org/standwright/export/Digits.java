package org.standwright.export;

/** Decimal numbers as short as they can be written, from whole steps, quickly and the same everywhere. */
public final class Digits {
    /** Steps of 10^-10 in 1/1024. */
    private static final long OF_A_1024TH = 9_765_625;

    private static final int PLACES_OF_A_1024TH = 10;

    private Digits() {}

    /** To three decimals. */
    public static String thousandths(double value) {
        return append(Math.round(value * 1000), 3, new StringBuilder()).toString();
    }

    /** To six decimals. */
    public static StringBuilder millionths(double value, StringBuilder text) {
        return append(Math.round(value * 1_000_000), 6, text);
    }

    /** All ten decimals that a coordinate on the 1/1024 mm grid can have. */
    public static String grid(double mm) {
        return grid(mm, new StringBuilder()).toString();
    }

    /** The same at the end of a text. */
    public static StringBuilder grid(double mm, StringBuilder text) {
        return append(Math.round(mm * 1024) * OF_A_1024TH, PLACES_OF_A_1024TH, text);
    }

    private static StringBuilder append(long steps, int places, StringBuilder text) {
        if (steps < 0) {
            text.append('-');
        }
        long one = 1;
        for (int i = 0; i < places; i++) {
            one *= 10;
        }
        long rest = Math.abs(steps) % one;
        text.append(Math.abs(steps) / one);
        if (rest == 0) {
            return text;
        }
        text.append('.');
        while (rest % 10 == 0) {
            rest /= 10;
            one /= 10;
        }
        for (long digit = one / 10; digit > rest; digit /= 10) {
            text.append('0');
        }
        return text.append(rest);
    }
}
