package org.standwright.router.plan.places;

import java.util.List;

/**
 * An answer to a packing job without cuts from edge to edge.
 *
 * @param cost of its boards, as their kinds say
 */
public record Filling(List<FilledBoard> boards, long cost) {
    public Filling {
        boards = List.copyOf(boards);
    }

    /** Area of the largest rectangle that stays free on any board, units². */
    public long rest() {
        return boards.stream().mapToLong(FilledBoard::rest).max().orElse(0);
    }
}
