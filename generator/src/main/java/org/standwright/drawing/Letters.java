package org.standwright.drawing;

/** Sizes of letters on paper, mm: legible at arm's length on a bench. */
public final class Letters {
    public static final double TITLE = 7;
    public static final double HEADING = 4.6;
    public static final double BODY = 3.3;
    public static final double TABLE = 2.9;
    public static final double DIMENSION = 2.5;
    /** No letters on a drawing are smaller. */
    public static final double SMALLEST = 1.7;

    private Letters() {}
}
