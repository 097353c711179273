package org.standwright.design.column;

import org.standwright.design.StandDesign;

/**
 * Heights within a drawer's cell: the room below and above its box, and its bottom's groove.
 *
 * <p>Groove: 10 mm above the lower edge, at most 6 mm deep (references 7.3, common practice).
 */
public final class BoxHeights {
    public static final double GROOVE_ABOVE_EDGE = 10;
    private static final double GROOVE_DEEPEST = 6;
    private static final double SCREW_OFF_GROOVE = 6;

    private final StandDesign design;
    private final Running running;

    public BoxHeights(StandDesign design) {
        this.design = design;
        this.running = Running.of(design);
    }

    /** Height of the groove for the bottom, mm. */
    public double grooveWidth() {
        return design.drawers().bottom().material().thickness()
                + design.carcass().fit();
    }

    public double grooveDepth() {
        return Math.min(GROOVE_DEEPEST, design.drawers().box().material().thickness() / 2);
    }

    /** Lowest screw in a box's wall that keeps clear of the groove, above the box's lower edge, mm. */
    public double overGroove() {
        return GROOVE_ABOVE_EDGE + grooveWidth() + SCREW_OFF_GROOVE;
    }

    /**
     * The lowest cell that holds a box, mm.
     *
     * @param top whether no other drawer stands right above
     */
    public double leastCell(boolean top) {
        return running.leastBox() + running.below() + running.above(top);
    }

    /**
     * Height of the box in a cell, mm.
     *
     * @param top whether no other drawer stands right above
     */
    public double inCell(double cell, boolean top) {
        return running.boxHeight(cell, top);
    }
}
