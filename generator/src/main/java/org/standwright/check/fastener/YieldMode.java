package org.standwright.check.fastener;

/** The ways in which a fastener in single shear gives: the wood crushes, the fastener turns, or it bends once or twice. */
public enum YieldMode {
    /** The main member crushes. */
    I_MAIN("Im", 4),
    /** The side member crushes. */
    I_SIDE("Is", 4),
    /** The fastener turns in both. */
    II("II", 3.6),
    /** It bends in the side member and crushes the main one. */
    III_MAIN("IIIm", 3.2),
    /** It bends in the main member and crushes the side one. */
    III_SIDE("IIIs", 3.2),
    /** It bends in both. */
    IV("IV", 3.2);

    private final String symbol;
    private final double reduction;

    YieldMode(String symbol, double reduction) {
        this.symbol = symbol;
        this.reduction = reduction;
    }

    /** As handbooks write it: 'IIIs'. */
    public String symbol() {
        return symbol;
    }

    /** Rd along the grain of a fastener of 1/4 in or more. */
    double reduction() {
        return reduction;
    }
}
