package org.standwright.design.kit;

/** Width to the right, depth away from the person, height, mm. */
public record Size3(double width, double depth, double height) {}
