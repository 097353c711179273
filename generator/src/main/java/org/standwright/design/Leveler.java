package org.standwright.design;

/**
 * A screw foot in a drive-in nut.
 *
 * @param height floor to the underside of the block it screws into: least, usual and most, mm
 * @param nutBore bore for the drive-in nut's barrel, mm
 * @param nutFlange diameter of the nut's flange, mm
 * @param base diameter of the foot on the floor, mm
 * @param rating permitted mass on one leveler, kg
 */
public record Leveler(String name, Range height, double nutBore, double nutFlange, double base, double rating) {
    /** Least, usual and most of an adjustable height, mm. */
    public record Range(double least, double usual, double most) {
        public Range {
            if (!(least <= usual && usual <= most)) {
                throw new IllegalArgumentException("least " + least + ", usual " + usual + " and most " + most
                        + " mm must rise. Give the height screwed in, as planned and screwed out.");
            }
        }
    }
}
