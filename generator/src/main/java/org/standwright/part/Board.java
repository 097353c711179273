package org.standwright.part;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * Kinds of wood by how they bend and creep.
 *
 * <p>Moduli are low ones, for boards of which nothing better is known. Plywood: the trade's shelf table gives 6550 N/mm² for
 * fir veneer-core plywood along its face grain (Architectural Woodwork Standards 2009, section 10); the value across is
 * from memory, unconfirmed. MDF: EN 622-5 over 12 to 19 mm; particleboard: EN 312 P2, 13 to 20 mm; OSB: EN 300, OSB/3 (all
 * as data sheets quote them). Solid wood: C24 of EN 338, as public sources quote it, halved because shop strips are not
 * graded; across, a thirtieth (EN 338, from memory).
 *
 * <p>Creep factors kdef are those of EN 1995-1-1 Table 3.2 for service class 1, a heated shop, as Italian NTC 2018 Table
 * 4.4.V repeats them; for MDF the row of MDF.LA, the nearest one.
 */
public enum Board {
    @JsonProperty("plywood")
    PLYWOOD(6500, 3000, 0.8),
    @JsonProperty("mdf")
    MDF(2200, 2200, 2.25),
    @JsonProperty("particleboard")
    PARTICLEBOARD(1600, 1600, 2.25),
    @JsonProperty("osb")
    OSB(3500, 1400, 1.5),
    @JsonProperty("solid-wood")
    SOLID_WOOD(5500, 180, 0.6);

    private final double along;
    private final double across;
    private final double kdef;

    Board(double along, double across, double kdef) {
        this.along = along;
        this.across = across;
        this.kdef = kdef;
    }

    /** The moduli to use where nothing better is known. */
    public Elasticity usual() {
        return new Elasticity(this, along, across);
    }

    /** What creep adds to the deflection under a lasting load, of the deflection at once. */
    public double kdef() {
        return kdef;
    }
}
