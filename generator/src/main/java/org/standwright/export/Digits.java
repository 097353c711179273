package org.standwright.export;

/** Decimal numbers as short as they can be written, from whole steps, quickly and the same everywhere. */
final class Digits {
    /** Steps of 10^-10 in 1/1024. */
    private static final long OF_A_1024TH = 9_765_625;

    private Digits() {}

    /** To three decimals. */
    static String thousandths(double value) {
        return text(Math.round(value * 1000), 3);
    }

    /** All ten decimals that a coordinate on the 1/1024 mm grid can have. */
    static String grid(double mm) {
        return text(Math.round(mm * 1024) * OF_A_1024TH, 10);
    }

    private static String text(long steps, int places) {
        if (steps == 0) {
            return "0";
        }
        var digits = new StringBuilder(Long.toString(Math.abs(steps)));
        while (digits.length() <= places) {
            digits.insert(0, '0');
        }
        digits.insert(digits.length() - places, '.');
        int end = digits.length();
        while (digits.charAt(end - 1) == '0') {
            end--;
        }
        if (digits.charAt(end - 1) == '.') {
            end--;
        }
        digits.setLength(end);
        return steps < 0 ? digits.insert(0, '-').toString() : digits.toString();
    }
}
