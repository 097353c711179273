package org.standwright.design;

/**
 * What a stand has to bear besides its machine.
 *
 * @param drawers what their contents weigh, full, kg/m³ of usable inside
 * @param shelves what lies on shelves and on the floors of open bays, kg/m²
 * @param lean weight of a person who leans on the worktop's edge, N
 * @param push of a person against the stand at its working height, N
 */
public record Loads(double drawers, double shelves, double lean, double push) {
    /**
     * Drawers: 500 kg/m³ (0.5 kg/dm³), our own guess for tools; no standard's figure was found. Shelves: 195 kg/m², 40
     * lbf/ft² of the Architectural Woodwork Standards 2009, section 10. Lean: 750 N of EN 16122. Push: 150 N, common
     * practice, no source.
     */
    public static final Loads USUAL = new Loads(500, 195, 750, 150);
}
