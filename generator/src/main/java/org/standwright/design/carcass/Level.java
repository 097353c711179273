package org.standwright.design.carcass;

/**
 * A level panel that is housed in the uprights at both ends.
 *
 * @param name of the part, which the cut list shows
 * @param x0 right face of the upright at its left end, mm
 * @param x1 left face of the upright at its right end, mm
 * @param front edge behind that of the carcass, mm
 * @param z its lower face, mm
 */
record Level(String label, String name, double x0, double x1, double front, double z) {}
