package org.standwright.sheet.sawing;

import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;

/**
 * One cut that has no number yet.
 *
 * @param sheet index of its board
 * @param before index of the step that makes its panel; {@link #NONE} for a board as it comes
 * @param waits whether all that it parts are pieces that wait
 */
record Step(
        int sheet,
        int before,
        boolean waits,
        Cut.Direction direction,
        Area kerf,
        Cut.Tool tool,
        Cut.Purpose purpose,
        Edge reference,
        int setting) {
    static final int NONE = -1;

    /** What the saw is set to. */
    record Setting(Cut.Tool tool, Cut.Direction direction, int setting) {}

    Setting fence() {
        return new Setting(tool, direction, setting);
    }

    Cut numbered(int number) {
        return new Cut(number, direction, kerf, tool, purpose, reference, setting);
    }
}
