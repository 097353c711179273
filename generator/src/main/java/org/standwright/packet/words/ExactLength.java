package org.standwright.packet.words;

import org.standwright.unit.Units;

/** A length in the maker's units, said with its millimetres where an inch fraction would hide some. */
public final class ExactLength {
    private ExactLength() {}

    public static String of(double mm, Units units) {
        var metric = Units.MM.length(mm);
        return units == Units.MM ? metric : units.length(mm) + " (" + metric + ")";
    }
}
