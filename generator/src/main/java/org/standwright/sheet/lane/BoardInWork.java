package org.standwright.sheet.lane;

/**
 * A board and what lies on it, as a layout wants it.
 *
 * @param <B> the board's own class
 */
public interface BoardInWork<B extends BoardInWork<B>> {
    /** Index of its kind in the job. */
    int kind();

    /** Who may change it; others change a copy. */
    long owner();

    /** The same board, to be changed by another owner. */
    B copy(long newOwner);

    /** What its pieces cover, enlarged by the kerf, units². */
    long pieceArea();

    /** Pieces of each type, by type. */
    int[] counts();

    /** Worth of what is free of it. */
    double restValue();

    /** Area of its largest free rectangle as it lies in the workshop, the kerf taken off, units². */
    long largestRest();
}
