package org.standwright.part;

import org.standwright.geom.Require;

/**
 * How stiff a board is in bending.
 *
 * @param along modulus of elasticity along the face grain, N/mm²
 * @param across modulus of elasticity across the face grain, N/mm²
 */
public record Elasticity(Board board, double along, double across) {
    public Elasticity {
        Require.positive("modulus along the grain", along, "a board");
        Require.positive("modulus across the grain", across, "a board");
    }

    /** The smaller modulus, for a board that bends both ways, N/mm². */
    public double least() {
        return Math.min(along, across);
    }
}
