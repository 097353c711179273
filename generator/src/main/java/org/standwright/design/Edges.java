package org.standwright.design;

import java.util.Optional;
import org.standwright.design.kit.Edging;

/**
 * Edges that are covered.
 *
 * @param carcass front edges of sides, bottom, sub-top, partitions and fixed shelves
 * @param fronts all four edges of drawer fronts and doors
 */
public record Edges(Optional<Edging> carcass, Optional<Edging> fronts, TopEdges worktop) {
    /** Edges of the worktop's upper layer, or of its only one. */
    public record TopEdges(
            Optional<Edging> front, Optional<Edging> back, Optional<Edging> left, Optional<Edging> right) {}
}
