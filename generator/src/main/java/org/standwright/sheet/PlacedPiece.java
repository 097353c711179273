package org.standwright.sheet;

/**
 * One piece of a cut line at its place on a sheet.
 *
 * @param label of the cut line
 * @param area as laid on the sheet: when turned, its length lies across the sheet
 */
public record PlacedPiece(String label, Area area, boolean turned) {}
