package org.standwright.design.wall;

/**
 * Where a holder hangs.
 *
 * @param wall its name
 * @param row counted from the lowest, 1 for the first
 * @param x left edge of the holder, from the wall's left end, mm
 */
public record Spot(String wall, int row, double x) {}
