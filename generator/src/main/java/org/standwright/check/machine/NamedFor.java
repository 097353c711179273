package org.standwright.check.machine;

import java.util.Locale;
import org.standwright.design.Cutout;

/** What a cut-out is for, read from the maker's own words. */
final class NamedFor {
    private NamedFor() {}

    /** Whether its use has this word in it, in capitals or not. */
    static boolean names(Cutout cutout, String word) {
        return cutout.use().toLowerCase(Locale.ROOT).contains(word);
    }
}
