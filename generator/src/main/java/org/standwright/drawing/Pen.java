package org.standwright.drawing;

import java.util.List;

/** Kinds of line, told apart by width and dashes so that they survive a black and white printer. */
public enum Pen {
    /** What is seen. */
    OUTLINE(0.35, List.of()),
    /** What lies behind something. */
    HIDDEN(0.2, List.of(1.6, 1.0)),
    /** Dimensions and their extensions. */
    DIMENSION(0.15, List.of()),
    /** Things that are not made here, hatching, lines of tables. */
    THIN(0.1, List.of()),
    /** Where a saw goes. */
    CUT(0.3, List.of()),
    /** Where a hand-held saw goes. */
    HAND_CUT(0.7, List.of(5.0, 1.4)),
    /** Where a wall ends. */
    WALL(0.6, List.of()),
    /** A line that heights are counted from, and centres. */
    CENTRE(0.2, List.of(6.0, 1.0, 1.0, 1.0)),
    /** Room that something takes up. */
    DOTTED(0.2, List.of(0.4, 0.8));

    private final double width;
    private final List<Double> dashes;

    Pen(double width, List<Double> dashes) {
        this.width = width;
        this.dashes = dashes;
    }

    /** mm. */
    public double width() {
        return width;
    }

    /** Lengths of ink and gap in turn, mm; empty for a solid line. */
    public List<Double> dashes() {
        return dashes;
    }
}
