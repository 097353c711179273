package org.standwright.design;

/**
 * A machine as its owner measured it, standing on its own feet.
 *
 * @param base outline of what stands on the worktop
 * @param envelope the whole machine, with tables and handles
 * @param mass kg
 * @param reference the surface that has to come to the working height
 * @param feet height of feet or pads that stay on under the base, mm; 0 when they are taken off
 */
public record Machine(String name, Size2 base, Size3 envelope, double mass, Reference reference, double feet) {}
