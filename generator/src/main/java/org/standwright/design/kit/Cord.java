package org.standwright.design.kit;

/**
 * A machine's cord.
 *
 * @param length mm
 * @param side on which it leaves the machine
 * @param plug widest size of its plug, which a grommet has to pass, mm
 */
public record Cord(double length, Side side, double plug) {}
