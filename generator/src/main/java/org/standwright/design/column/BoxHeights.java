package org.standwright.design.column;

import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;

/**
 * Heights within a drawer's cell: the room below and above its box, its bottom's groove and its slide line.
 *
 * <p>Clearances: box at least 6 mm below the member above and 10 mm above the one below (references 7.1, common
 * practice). Groove: 10 mm above the lower edge, at most 6 mm deep (references 7.3, common practice).
 */
public final class BoxHeights {
    public static final double BELOW = 10;
    public static final double ABOVE = 6;
    public static final double GROOVE_ABOVE_EDGE = 10;
    private static final double GROOVE_DEEPEST = 6;
    private static final double SCREW_OFF_GROOVE = 6;

    private final StandDesign design;

    public BoxHeights(StandDesign design) {
        this.design = design;
    }

    /** Height of the groove for the bottom, mm. */
    public double grooveWidth() {
        return design.drawers().bottom().material().thickness()
                + design.carcass().fit();
    }

    public double grooveDepth() {
        return Math.min(GROOVE_DEEPEST, design.drawers().box().material().thickness() / 2);
    }

    /** Centre of the slide above the box's lower edge: one for all drawers, so one story stick serves them. */
    public double slideLine() {
        double overGroove = GROOVE_ABOVE_EDGE + grooveWidth() + SCREW_OFF_GROOVE;
        return Exact.onTapeUp(
                design.unit(), Math.max(overGroove, design.drawers().slide().bodyHeight() / 2));
    }

    /** The lowest box that is as high as its slide, mm. */
    public double leastBox() {
        return Exact.onTapeUp(
                design.unit(), slideLine() + design.drawers().slide().bodyHeight() / 2);
    }

    public double leastCell() {
        return leastBox() + BELOW + ABOVE;
    }

    /** Height of the box in a cell, to the mark of the tape below, mm. */
    public double inCell(double cell) {
        return Exact.onTapeDown(design.unit(), cell - BELOW - ABOVE);
    }
}
