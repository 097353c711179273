package org.standwright.file;

import java.util.OptionalDouble;
import org.standwright.design.kit.Trim;

/** A trim as a file writes it: one for all edges, and others where they differ, mm. */
record TrimFields(double all, OptionalDouble left, OptionalDouble right, OptionalDouble bottom, OptionalDouble top) {

    Trim toTrim() {
        return new Trim(left.orElse(all), right.orElse(all), bottom.orElse(all), top.orElse(all));
    }
}
