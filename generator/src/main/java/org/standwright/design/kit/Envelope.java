package org.standwright.design.kit;

import java.util.OptionalDouble;

/**
 * The room that a whole machine takes, with its tables, handles, cranks and fence.
 *
 * @param width to the right, mm
 * @param depth away from the person, mm
 * @param height above the underside of the base, mm
 * @param left how far it reaches over the left of the base, mm; without it, the base lies in its middle
 * @param front how far it reaches over the front of the base, mm; without it, the base lies in its middle
 */
public record Envelope(double width, double depth, double height, OptionalDouble left, OptionalDouble front) {}
