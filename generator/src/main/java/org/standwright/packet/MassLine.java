package org.standwright.packet;

/**
 * One thing that weighs.
 *
 * @param mass kg
 */
public record MassLine(String what, double mass) {}
