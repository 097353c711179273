package org.standwright.sheet.job;

import org.standwright.geom.Require;

/**
 * Boards of one size and cost.
 *
 * @param length trimmed and enlarged by the kerf
 * @param width trimmed and enlarged by the kerf
 * @param count how many there are, {@link #UNLIMITED} for as many as it takes
 * @param cost of one; 0 for what is at hand
 * @param mating whether it is as thick as the design counts on, within a dado's play
 */
public record BoardKind(int length, int width, int count, long cost, boolean mating) {
    public static final int UNLIMITED = Integer.MAX_VALUE;

    public BoardKind {
        Require.positive("length", length, "board");
        Require.positive("width", width, "board");
        Require.positive("count", count, "board");
        Require.notNegative("cost", cost, "board");
    }

    public long area() {
        return (long) length * width;
    }
}
