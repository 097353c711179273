package org.standwright.design.frame;

import org.standwright.design.kit.Side;

/**
 * A hole bored into an upright from within an opening, in the assembly frame: a slide's, a hinge plate's or a shelf pin's.
 *
 * @param wall of the opening that is bored: {@link Side#LEFT} or {@link Side#RIGHT}
 * @param x plane of that wall, mm
 * @param y from the carcass's front edge, mm
 * @param z above the floor, mm
 */
public record SideBore(Side wall, double x, double y, double z, double diameter, double depth, String purpose) {}
