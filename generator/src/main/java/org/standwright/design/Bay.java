package org.standwright.design;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One vertical division of the carcass, or of a part of a bay that is divided again.
 *
 * @param width of its opening, mm; bays without a width share what is left evenly
 * @param contents from top to bottom
 */
public record Bay(OptionalDouble width, List<Content> contents) {
    public Bay {
        contents = List.copyOf(contents);
    }
}
