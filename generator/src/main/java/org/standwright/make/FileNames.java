package org.standwright.make;

import java.util.Locale;

/** File names that every system takes, from whatever makers call things. */
final class FileNames {
    private static final int LONGEST = 60;

    private FileNames() {}

    /** {@code A-drawer-bottom-mm.stl}: unique as long as {@code first} is, which is made of letters and digits. */
    static String of(String first, String words, String ending) {
        var plain =
                words.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        var cut = plain.substring(0, Math.min(plain.length(), LONGEST)).replaceAll("[-.]+$", "");
        return first + (cut.isEmpty() ? "" : "-" + cut) + ending;
    }
}
