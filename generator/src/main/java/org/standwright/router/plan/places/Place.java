package org.standwright.router.plan.places;

/**
 * Where a piece of a packing job lies on its board, sizes enlarged by the spacing.
 *
 * @param type index in the job
 * @param x of its lower left corner, units
 * @param turned whether its length lies across the board
 */
public record Place(int type, int x, int y, boolean turned) {}
