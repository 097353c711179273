package org.standwright.sheet.sawing;

/**
 * One edge of a panel.
 *
 * @param over what stands out beyond the goal and is to come off, units
 */
record Rim(int over, Kind kind) {
    /** How an edge came about. */
    enum Kind {
        /** The board's own. */
        FACTORY,
        /** Straight, as sawn to size. */
        SAWN,
        /** Left by a hand-held saw, with an allowance. */
        ROUGH
    }

    static final Rim SAWN = new Rim(0, Kind.SAWN);

    boolean isRough() {
        return kind == Kind.ROUGH;
    }
}
