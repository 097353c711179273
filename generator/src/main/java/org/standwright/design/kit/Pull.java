package org.standwright.design.kit;

/**
 * A handle or a knob.
 *
 * @param spacing between the centres of its two screws, mm; 0 for a knob
 * @param bore for its screw, mm
 * @param projection from the front, mm
 */
public record Pull(String name, double spacing, double bore, double projection) {}
