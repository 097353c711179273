package org.standwright.part;

import org.standwright.geom.Rect;

/** The four narrow sides of a board: two ends, across the grain, and two edges along it. */
public enum Edge {
    /** x = 0: the reference end. */
    X0,
    /** x = length: the far end. */
    X1,
    /** y = 0: the reference edge. */
    Y0,
    /** y = width: the far edge. */
    Y1;

    /** Whether it is an end, so that what is bored into it runs along the grain. */
    public boolean isEnd() {
        return this == X0 || this == X1;
    }

    /** The one across the board from it. */
    public Edge opposite() {
        return switch (this) {
            case X0 -> X1;
            case X1 -> X0;
            case Y0 -> Y1;
            case Y1 -> Y0;
        };
    }

    /** The strip of this width along it, of a board of this size seen from above. */
    public Rect strip(double deep, double partLength, double partWidth) {
        return switch (this) {
            case X0 -> new Rect(0, 0, deep, partWidth);
            case X1 -> new Rect(partLength - deep, 0, partLength, partWidth);
            case Y0 -> new Rect(0, 0, partLength, deep);
            case Y1 -> new Rect(0, partWidth - deep, partLength, partWidth);
        };
    }

    /** Whether it lies at the far side of the board, so that what is bored into it runs towards the part's origin. */
    public boolean isFar() {
        return this == X1 || this == Y1;
    }
}
