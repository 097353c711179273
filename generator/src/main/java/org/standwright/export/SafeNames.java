package org.standwright.export;

import java.util.HashSet;
import java.util.Set;

/** Names for formats that know only letters, digits, dots, hyphens and underscores, each given once. */
final class SafeNames {
    private final Set<String> given = new HashSet<>();

    /** {@code name} made plain, with a number behind it if that is taken. */
    String of(String name) {
        var plain = plain(name);
        var free = plain;
        for (int number = 2; !given.add(free); number++) {
            free = plain + "_" + number;
        }
        return free;
    }

    static String plain(String name) {
        return name.replaceAll("[^A-Za-z0-9.-]+", "_");
    }
}
