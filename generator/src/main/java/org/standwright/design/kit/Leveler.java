package org.standwright.design.kit;

/**
 * A screw foot in a drive-in nut.
 *
 * @param height floor to the underside of the block it screws into: least, usual and most, mm
 * @param nutBore bore for the drive-in nut's barrel, mm
 * @param nutFlange diameter of the nut's flange, mm
 * @param base diameter of the foot on the floor, mm
 * @param rating permitted mass on one leveler, kg
 * @param mass of one, kg
 */
public record Leveler(
        String name, Range height, double nutBore, double nutFlange, double base, double rating, double mass) {}
