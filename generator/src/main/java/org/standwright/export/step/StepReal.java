package org.standwright.export.step;

/**
 * A number as ISO 10303-21 writes a real: digits with a point always. To the twelfth decimal, the tenth from 1000 on,
 * which is finer than the arithmetic behind a coordinate, and the same whatever machine writes it.
 */
final class StepReal {
    private static final int DECIMALS = 12;
    private static final long ONE = 1_000_000_000_000L;
    private static final double LARGEST = 9e6;

    private StepReal() {}

    static String of(double value) {
        if (!(Math.abs(value) < LARGEST)) {
            throw new IllegalArgumentException(
                    value + " is no number for a STEP file; it must be within " + LARGEST + ".");
        }
        // a long number has no more digits to be told by
        double size = Math.abs(value);
        long units = size < 1000 ? Math.round(size * ONE) : 100 * Math.round(size * ONE / 100);
        var text = new StringBuilder(value < 0 && units > 0 ? "-" : "");
        text.append(units / ONE).append('.');
        long rest = units % ONE;
        if (rest > 0) {
            var digits = Long.toString(rest);
            int last = digits.length();
            while (digits.charAt(last - 1) == '0') {
                last--;
            }
            text.append("0".repeat(DECIMALS - digits.length())).append(digits, 0, last);
        }
        return text.toString();
    }
}
