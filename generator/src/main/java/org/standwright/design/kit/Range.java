package org.standwright.design.kit;

/** Least, usual and most of an adjustable height, mm. */
public record Range(double least, double usual, double most) {
    public Range {
        if (!(least <= usual && usual <= most)) {
            throw new IllegalArgumentException("least " + least + ", usual " + usual + " and most " + most
                    + " mm must rise. Give the height at its lowest, as planned and at its highest.");
        }
    }
}
