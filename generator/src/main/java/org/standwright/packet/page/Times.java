package org.standwright.packet.page;

import java.util.regex.Pattern;

/** Files and presets write sizes as 8 x 60 mm; paper has the sign for it. */
final class Times {
    private static final Pattern BETWEEN_FIGURES = Pattern.compile("(?<=\\d|\\d mm|\\d in) x (?=\\d)");

    private Times() {}

    /** '8 × 60 mm'. */
    static String sign(String words) {
        return BETWEEN_FIGURES.matcher(words).replaceAll(" × ");
    }
}
