package org.standwright.design;

import org.standwright.design.kit.Screw;

/**
 * Screws by what they hold.
 *
 * @param panel for worktop, back, blocks, joints and fronts
 * @param slide for drawer slides and hinges
 */
public record Screws(Screw panel, Screw slide) {}
