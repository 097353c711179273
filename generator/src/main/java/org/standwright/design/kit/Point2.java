package org.standwright.design.kit;

/** Seen from above: x to the right, y away from the person, mm. */
public record Point2(double x, double y) {}
