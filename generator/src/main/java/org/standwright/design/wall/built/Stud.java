package org.standwright.design.wall.built;

/**
 * A place behind the surface that takes a screw.
 *
 * @param number from the left, 1 for the first
 * @param x its centre, from the wall's left end, mm
 * @param width of wood or steel there, mm; of masonry, 0
 */
public record Stud(int number, double x, double width) {}
