package org.standwright.packet.words;

import org.standwright.geom.Grid;
import org.standwright.part.Part;
import org.standwright.unit.Units;

/** The three sizes of a part as they are read: length along the grain × width, without a unit. */
public record BlankSizes(Part part, Units units) {
    /** What leaves the saw, with its allowance. */
    public String rough() {
        return size(part.roughLength(), part.roughWidth());
    }

    /** What its bands go on. */
    public String cut() {
        return size(part.cutLength(), part.cutWidth());
    }

    /** What is built in. */
    public String finished() {
        return size(part.length(), part.width());
    }

    public boolean isTrimmed() {
        return !Grid.same(part.oversize(), 0);
    }

    public boolean isBanded() {
        return !(Grid.same(part.cutLength(), part.length()) && Grid.same(part.cutWidth(), part.width()));
    }

    private String size(double length, double width) {
        return units.bareLength(length) + " × " + units.bareLength(width);
    }
}
