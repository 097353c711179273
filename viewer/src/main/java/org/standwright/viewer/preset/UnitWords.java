package org.standwright.viewer.preset;

import javafx.util.StringConverter;
import org.standwright.unit.Units;

/** Units as a maker calls them. */
final class UnitWords extends StringConverter<Units> {
    @Override
    public String toString(Units units) {
        return switch (units) {
            case MM -> "millimetres";
            case INCH -> "inches, fractions to 1/32";
            case INCH_64 -> "inches, fractions to 1/64";
        };
    }

    @Override
    public Units fromString(String words) {
        throw new UnsupportedOperationException("Units are chosen, not typed.");
    }
}
