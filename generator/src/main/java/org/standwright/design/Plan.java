package org.standwright.design;

import java.util.OptionalDouble;

/**
 * Outline of the carcass, without fronts and overhang; a size that is left out follows from the machine's base, its
 * margins and the worktop's overhang.
 *
 * @param width to the right, mm
 * @param depth away from the person, mm
 */
public record Plan(OptionalDouble width, OptionalDouble depth) {}
