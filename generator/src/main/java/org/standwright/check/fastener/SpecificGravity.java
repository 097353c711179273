package org.standwright.check.fastener;

/**
 * Specific gravity of woods, oven-dry: what every formula of this package takes as {@code gravity}, without a unit.
 *
 * <p>NDS Table 12.3.3A, as quoted; the two of plywood from memory, unconfirmed, and low for most furniture plywood.
 */
public enum SpecificGravity {
    DOUGLAS_FIR_LARCH("Douglas fir-larch", 0.50),
    SOUTHERN_PINE("southern pine", 0.55),
    SPRUCE_PINE_FIR("spruce-pine-fir", 0.42),
    HEM_FIR("hem-fir", 0.43),
    SPRUCE_PINE_FIR_SOUTH("spruce-pine-fir (south)", 0.36),
    DOUGLAS_FIR_SOUTH("Douglas fir-south", 0.46),
    RED_OAK("red oak", 0.67),
    YELLOW_POPLAR("yellow poplar", 0.43),
    /** Any plywood of which nobody says better. */
    PLYWOOD("plywood", 0.42),
    /** Plywood of the structural I grade, and OSB. */
    STRUCTURAL_PANEL("structural panel", 0.50);

    private final String wood;
    private final double value;

    SpecificGravity(String wood, double value) {
        this.wood = wood;
        this.value = value;
    }

    /** What the wood is called. */
    public String wood() {
        return wood;
    }

    public double value() {
        return value;
    }
}
