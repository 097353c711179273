package org.standwright.solid.layer;

/**
 * What a tool takes from a board between two heights.
 *
 * @param ring seen from above
 * @param bottom lower z, 1/1024 mm; may lie below the board
 * @param top upper z; may lie above the board
 */
public record Footprint(Ring ring, int bottom, int top) {}
