package org.standwright.design.kit;

/**
 * The push or pull of the hand and the work in normal use.
 *
 * @param force N
 * @param height above the underside of the machine's base, mm
 */
public record WorkingForce(double force, double height) {}
