package org.standwright.design.kit;

/** A fluted wooden dowel; diameter and length in mm. */
public record Dowel(String name, double diameter, double length) {}
