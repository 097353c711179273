package org.standwright.cutlist;

import org.standwright.part.Part;

/** Parts that are cut over and trimmed later. */
public final class TrimmedParts {
    private TrimmedParts() {}

    /** A layer of the worktop is bored where it lies; a front or a door has to be bored before it is hung. */
    public static boolean boredAfter(Part part) {
        return part.name().startsWith("worktop");
    }
}
