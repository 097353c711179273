package org.standwright;

import java.util.Locale;
import java.util.SplittableRandom;

/** Lengths as a maker would write them: whole or half millimetres, or sixteenths of an inch. */
record RandomLengths(SplittableRandom random, boolean metric) {
    String between(double from, double to) {
        double mm = from == to ? from : random.nextDouble(from, to);
        if (metric) {
            return quoted(String.format(Locale.ROOT, "%.1f mm", Math.round(mm * 2) / 2.0));
        }
        long sixteenths = Math.round(mm / 25.4 * 16);
        return quoted(sixteenths / 16 + " " + sixteenths % 16 + "/16 in");
    }

    /** One of these texts. */
    String oneOf(String... texts) {
        return texts[random.nextInt(texts.length)];
    }

    /** This text, or nothing, once in {@code times}. */
    String onceIn(int times, String text) {
        return random.nextInt(times) == 0 ? text : "";
    }

    static String quoted(String text) {
        return "\"" + text + "\"";
    }
}
