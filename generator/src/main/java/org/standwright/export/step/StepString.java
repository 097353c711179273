package org.standwright.export.step;

import java.util.Locale;

/**
 * Text between apostrophes as ISO 10303-21 writes it: apostrophes and backslashes doubled, what is not plain ASCII as
 * UTF-16 in hexadecimal between {@code \X2\} and {@code \X0\}, characters beyond its first plane as {@code \X4\}.
 */
final class StepString {
    private static final String END = "\\X0\\";

    private StepString() {}

    static String of(String text) {
        var quoted = new StringBuilder("'");
        var mode = "";
        for (int c : text.codePoints().toArray()) {
            var next = mode(c);
            if (!next.equals(mode)) {
                quoted.append(mode.isEmpty() ? "" : END).append(next);
                mode = next;
            }
            append(quoted, c, mode);
        }
        return quoted.append(mode.isEmpty() ? "" : END).append('\'').toString();
    }

    private static String mode(int c) {
        if (c >= 0x20 && c < 0x7F) {
            return "";
        }
        return c < 0x10000 ? "\\X2\\" : "\\X4\\";
    }

    private static void append(StringBuilder quoted, int c, String mode) {
        if (mode.isEmpty()) {
            quoted.append(c == '\'' || c == '\\' ? Character.toString(c).repeat(2) : Character.toString(c));
        } else {
            var digits = Integer.toHexString(c).toUpperCase(Locale.ROOT);
            quoted.append("0".repeat((mode.equals("\\X2\\") ? 4 : 8) - digits.length()))
                    .append(digits);
        }
    }
}
