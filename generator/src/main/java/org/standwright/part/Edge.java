package org.standwright.part;

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

    /** Whether it lies at the far side of the board, so that what is bored into it runs towards the part's origin. */
    public boolean isFar() {
        return this == X1 || this == Y1;
    }
}
