package org.standwright.design;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.kit.Range;

/**
 * How a machine stands on the worktop.
 *
 * @param turn counter-clockwise seen from above: 0, 90, 180 or 270 degrees
 * @param margins from its turned base to the worktop's edges
 * @param shims under the machine: a term of the height stack that can be adjusted
 */
public record Place(int turn, Margins margins, Optional<Range> shims) {
    /**
     * From the base to each edge of the worktop, mm; less than 0 where the base reaches over it. Where a size of the plan
     * is left out, it follows from both margins across it; where it is given, one margin says where the base stands, none
     * puts it over the middle of the carcass.
     */
    public record Margins(OptionalDouble front, OptionalDouble back, OptionalDouble left, OptionalDouble right) {}
}
