package org.standwright.part;

import java.util.Locale;
import java.util.regex.Pattern;

/** What a thing looks like in plain light: parts of red, green and blue, 0 to 255 each; {@code #rrggbb} as text. */
public record Colour(int red, int green, int blue) {
    private static final Pattern TEXT = Pattern.compile("#[0-9A-Fa-f]{6}");

    public Colour {
        requirePart("red", red);
        requirePart("green", green);
        requirePart("blue", blue);
    }

    /** Reads six hexadecimal digits behind a #: {@code #d9b982}. */
    public static Colour parse(String text) {
        if (!TEXT.matcher(text).matches()) {
            throw new IllegalArgumentException(
                    "colour '" + text
                            + "' must be # and six hexadecimal digits, two each for red, green and blue. Write it like #d9b982.");
        }
        int all = Integer.parseInt(text.substring(1), 16);
        return new Colour(all >> 16, all >> 8 & 0xff, all & 0xff);
    }

    private static void requirePart(String name, int value) {
        if (value < 0 || value > 255) {
            throw new IllegalArgumentException(name + " of a colour is " + value + ", but must be 0 to 255.");
        }
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
    }
}
