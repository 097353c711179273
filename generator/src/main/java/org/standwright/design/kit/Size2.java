package org.standwright.design.kit;

/** Seen from above: width to the right, depth away from the person, mm. */
public record Size2(double width, double depth) {}
