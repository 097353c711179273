package org.standwright.sheet.lane;

/** The boards of a job do not suffice, as far as the search could find. */
public final class ScarceStockException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final long missingArea;

    ScarceStockException(long missingArea) {
        super("the boards in stock do not suffice for all pieces.");
        this.missingArea = missingArea;
    }

    /** Of the pieces that found no place, enlarged by the kerf, units². */
    public long missingArea() {
        return missingArea;
    }
}
